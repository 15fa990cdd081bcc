namespace Clothwright.Core.Setts;

/// <summary>How close a cloth is to be, by what it is for.</summary>
public enum ClothPurpose
{
    /// <summary>Gauze, lace, cloth one can see through.</summary>
    Airy,

    /// <summary>A scarf or shawl that hangs in soft folds.</summary>
    Drape,

    /// <summary>Towels, clothing, blankets.</summary>
    Everyday,

    /// <summary>Tailoring, bags, upholstery.</summary>
    Firm,

    /// <summary>The weft covers the warp.</summary>
    WeftFaced,

    /// <summary>The warp covers the weft.</summary>
    WarpFaced,
}
