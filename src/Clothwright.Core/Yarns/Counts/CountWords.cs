namespace Clothwright.Core.Yarns;

/// <summary>What the text of a count says, word for word, before a system gives it meaning.</summary>
internal sealed record CountWords
{
    /// <summary>The system that the text names itself; null if none.</summary>
    public CountSystem? System { get; init; }

    /// <summary>Whether an R marks the number as that of the finished yarn.</summary>
    public bool IsResultant { get; init; }

    /// <summary>The first number.</summary>
    public double First { get; init; }

    /// <summary>Whether the first number is marked as a count by <c>'s</c>.</summary>
    public bool FirstMarked { get; init; }

    /// <summary>The sign of folding: a stroke, an x, or the null character for a single number.</summary>
    public char Fold { get; init; }

    /// <summary>The second number; with several foldings one after the other, their product.</summary>
    public double Second { get; init; }

    /// <summary>Whether the second number is marked as a count by <c>'s</c>.</summary>
    public bool SecondMarked { get; init; }

    /// <summary>The number after a semicolon; null if none.</summary>
    public double? Other { get; init; }

    /// <summary>Whether an R marks the number after the semicolon.</summary>
    public bool OtherIsResultant { get; init; }
}
