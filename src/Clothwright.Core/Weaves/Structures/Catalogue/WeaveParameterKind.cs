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

    /// <summary>Anything written, for example a name or the letters of blocks.</summary>
    Words,
}
