namespace Clothwright.Core.Yarns;

/// <summary>How a system customarily writes a plied yarn.</summary>
public enum PlyOrder
{
    /// <summary><c>8/2</c>: the count of one strand, then the strands.</summary>
    CountFirst,

    /// <summary><c>2/8</c>: the strands, then the count of one.</summary>
    PlyFirst,

    /// <summary>Both orders are met; the larger number is the count.</summary>
    Either,

    /// <summary><c>60/2</c>: the count of the finished yarn, then the strands.</summary>
    Resultant,

    /// <summary>Only the notation says whether the number is of one strand or of the finished yarn.</summary>
    Stated,

    /// <summary>The number is that of the finished yarn and no strands are written.</summary>
    None,
}
