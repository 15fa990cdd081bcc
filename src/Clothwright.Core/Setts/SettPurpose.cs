namespace Clothwright.Core.Setts;

/// <summary>What a cloth is for, as far as it decides how close its threads lie.</summary>
public enum SettPurpose
{
    /// <summary>Open gauze and lace weaves.</summary>
    Airy,

    /// <summary>Scarves and shawls that fall softly.</summary>
    Drape,

    /// <summary>Towels, blankets, general cloth, near balanced.</summary>
    Everyday,

    /// <summary>Tailoring, bags, upholstery.</summary>
    Firm,

    /// <summary>The weft packs down and hides the warp.</summary>
    WeftFaced,

    /// <summary>The ends touch and hide the weft.</summary>
    WarpFaced,
}
