namespace Clothwright.Core.Workings;

/// <summary>Reads how a table of this assembly names its sources.</summary>
internal static class SourceText
{
    /// <summary>Reads <c>standard: NAME</c>, <c>published: NAME</c>, <c>memory: NAME</c>, <c>practice</c>, <c>definition</c>, <c>derivation</c>.</summary>
    /// <exception cref="InvalidOperationException">The table names a source in another way.</exception>
    public static Source Read(string text)
    {
        string[] parts = text.Split(':', 2, StringSplitOptions.TrimEntries);
        return (parts[0], parts.Length) switch
        {
            ("standard", 2) => Source.Standard(parts[1]),
            ("published", 2) => Source.Published(parts[1]),
            ("memory", 2) => Source.FromMemoryOf(parts[1]),
            ("practice", 1) => Source.CommonPractice,
            ("definition", 1) => Source.Definition,
            ("derivation", 1) => Source.Derivation,
            _ => throw new InvalidOperationException($"\"{text}\" does not name a source."),
        };
    }
}
