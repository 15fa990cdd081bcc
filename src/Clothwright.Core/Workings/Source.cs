using Clothwright.Core.Wordings;

namespace Clothwright.Core.Workings;

/// <summary>Where a rule or a value comes from.</summary>
/// <param name="Kind">How far it can be trusted.</param>
/// <param name="Name">The source by name; for <see cref="SourceKind.CommonPractice"/> what the habit is called.</param>
public sealed record Source(SourceKind Kind, string Name)
{
    private const string Recalled = "from memory of";

    /// <summary>A habit of the trade without a source.</summary>
    public static Source CommonPractice { get; } = new(SourceKind.CommonPractice, "common practice, no source");

    /// <summary>The weaver's own choice.</summary>
    public static Source Decision { get; } = new(SourceKind.Decision, "decided on the worksheet");

    /// <summary>The weaver's own measurement.</summary>
    public static Source Measured { get; } = new(SourceKind.Measured, "measured");

    /// <summary>Exact definitions of units.</summary>
    public static Source Definition { get; } = new(SourceKind.Definition, "definition of the units");

    /// <summary>Geometry or algebra shown in the formula.</summary>
    public static Source Derivation { get; } = new(SourceKind.Derivation, "follows from the formula");

    /// <summary>A value recalled from a named source.</summary>
    /// <param name="name">The source.</param>
    public static Source FromMemoryOf(string name) => new(SourceKind.FromMemory, $"{Recalled} {name}");

    /// <summary>A source that was read.</summary>
    /// <param name="name">The source.</param>
    public static Source Published(string name) => new(SourceKind.Published, name);

    /// <summary>A published standard.</summary>
    /// <param name="name">The standard.</param>
    public static Source Standard(string name) => new(SourceKind.Standard, name);

    /// <summary>The source in another language; titles of books and papers stay as they are.</summary>
    /// <param name="wording">The language.</param>
    public string In(Wording wording)
    {
        ArgumentNullException.ThrowIfNull(wording);
        return Name.StartsWith(Recalled, StringComparison.Ordinal) ? $"{wording.Tell(Recalled)} {Name[(Recalled.Length + 1)..]}" : wording.TellWhole(Name);
    }

    /// <inheritdoc />
    public override string ToString() => Name;
}
