namespace Clothwright.Interchange.Wif;

/// <summary>A section as it stands in the file: entries if the standard says how to read it, lines if it is kept word for word.</summary>
internal sealed class WifRawSection(string written, string name, int line)
{
    public string Written { get; } = written;

    public string Name { get; } = name;

    public int Line { get; } = line;

    public bool IsKept { get; } = WifSectionNames.IsKept(name);

    public List<WifEntry> Entries { get; } = [];

    public List<string> Lines { get; } = [];

    /// <summary>Blank lines at the end of a section belong to the gap before the next.</summary>
    public void DropBlankTail()
    {
        while (Lines.Count > 0 && string.IsNullOrWhiteSpace(Lines[^1])) Lines.RemoveAt(Lines.Count - 1);
    }
}
