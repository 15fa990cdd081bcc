using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Something a weaver can choose about a weave.</summary>
/// <param name="Name">Short name, for example <c>step</c>.</param>
/// <param name="Meaning">What it does, in plain words.</param>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Default">The value if none is given; empty where the weave then finds its own.</param>
public sealed record WeaveParameter(string Name, string Meaning, WeaveParameterKind Kind, string Default)
{
    /// <summary>The smallest number allowed.</summary>
    public int Least { get; init; } = 1;

    /// <summary>The largest number allowed.</summary>
    public int Most { get; init; } = ShaftSet.Highest;

    /// <summary>The words to choose from.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>A whole number.</summary>
    internal static WeaveParameter Number(string name, string meaning, int? preset, int least, int most) =>
        new(name, meaning, WeaveParameterKind.Number, preset is int p ? $"{p}" : "") { Least = least, Most = most };

    /// <summary>One of a few words.</summary>
    internal static WeaveParameter Choice(string name, string meaning, params ImmutableArray<string> choices) =>
        new(name, meaning, WeaveParameterKind.Choice, choices[0]) { Choices = choices };

    /// <summary>Whole numbers between limits.</summary>
    internal static WeaveParameter Numbers(string name, string meaning, string preset, int least, int most) =>
        new(name, meaning, WeaveParameterKind.Numbers, preset) { Least = least, Most = most };
}
