namespace Clothwright.Core.Weaves.Structures;

/// <summary>What kind of thing a parameter of a weave is.</summary>
public enum WeaveParameterKind
{
    /// <summary>A whole number between limits.</summary>
    Number,

    /// <summary>Figures with a slash between, for example 2/2.</summary>
    Figures,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>Whole numbers with blanks between, for example 1 3 5 2 6 4.</summary>
    Numbers,

    /// <summary>Letters of blocks, with or without lengths, for example ABBA or A4 B4; also lines of blocks that show.</summary>
    Blocks,

    /// <summary>An order of yarns, for example 4A 4B.</summary>
    Order,

    /// <summary>A small cloth: rows of 0 and 1, pick by pick, for example 1100/0110/0011/1001, or the name of a weave.</summary>
    Cloth,

    /// <summary>Anything written, for example a name.</summary>
    Words,
}
