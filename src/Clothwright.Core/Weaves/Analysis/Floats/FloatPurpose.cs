namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>What a cloth is for, as far as floats matter.</summary>
public enum FloatPurpose
{
    /// <summary>A throw or blanket for a small child.</summary>
    ChildThrow,

    /// <summary>A bag, carried and filled.</summary>
    Bag,

    /// <summary>A cover for a seat or a cushion.</summary>
    Cushion,

    /// <summary>A towel or a tea towel.</summary>
    Towel,

    /// <summary>A piece of clothing that is sewn.</summary>
    Garment,

    /// <summary>A scarf or a shawl.</summary>
    Scarf,

    /// <summary>A blanket or throw for grown people.</summary>
    Blanket,
}
