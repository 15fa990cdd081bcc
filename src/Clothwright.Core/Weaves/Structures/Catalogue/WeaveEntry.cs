using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>A weave that can be asked for by name.</summary>
public sealed class WeaveEntry
{
    internal WeaveEntry(string name, string family, string inShort, ImmutableArray<string> otherNames, ImmutableArray<WeaveParameter> parameters, Func<WeaveChoices, Weave> make)
    {
        Name = name;
        Family = family;
        InShort = inShort;
        OtherNames = otherNames;
        Parameters = parameters;
        Repeat = make;
    }

    /// <summary>Trade name, lower case.</summary>
    public string Name { get; }

    /// <summary>The family of weaves, for example twills.</summary>
    public string Family { get; }

    /// <summary>What the weave is, in a sentence.</summary>
    public string InShort { get; }

    /// <summary>Other names under which it is known, lower case.</summary>
    public ImmutableArray<string> OtherNames { get; }

    /// <summary>What can be chosen about it.</summary>
    public ImmutableArray<WeaveParameter> Parameters { get; }

    /// <summary>Makes one repeat.</summary>
    internal Func<WeaveChoices, Weave> Repeat { get; }

    /// <summary>Makes the weave at a size where more than carrying the repeat is to be done; null where it is not.</summary>
    internal Func<WeaveChoices, WeaveSize, Weave>? AtSize { get; init; }

    /// <summary>Parameter values that go with one of the other names, for example weft face with sateen.</summary>
    internal Func<string, (string Parameter, string Value)?>? ImpliedBy { get; init; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
