using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Wif;

/// <summary>The text of a file split into sections.</summary>
internal sealed class WifSections
{
    private readonly Dictionary<string, WifRawSection> _byName = new(StringComparer.Ordinal);
    private readonly List<WifRawSection> _inFile = [];
    private readonly WifWarnings _warnings;
    private WifRawSection? _current;

    private WifSections(string text, WifWarnings warnings)
    {
        Text = text;
        _warnings = warnings;
    }

    public string Text { get; }

    public IReadOnlyList<WifRawSection> InFile => _inFile;

    public bool HoldsAny => _inFile.Exists(section => WifSectionNames.IsStandard(section.Name));

    public WifRawSection? Find(string name) => _byName.GetValueOrDefault(name);

    public static WifSections Split(string text, ReadingLimits limits, WifWarnings warnings)
    {
        var sections = new WifSections(text, warnings);
        int line = 0;
        for (int start = 0; start < text.Length;)
        {
            int length = text.AsSpan(start).IndexOfAny('\r', '\n');
            int end = length < 0 ? text.Length : start + length;
            line++;
            Refuse(end - start > limits.MaxLineCharacters, $"Line {line} is longer than {limits.MaxLineCharacters} characters.", line);
            Refuse(sections._inFile.Count > limits.MaxSections, $"There are more than {limits.MaxSections} sections.", line);
            Refuse(line > limits.MaxLines, $"There are more than {limits.MaxLines} lines.", line);
            sections.Take(start, end, line);
            bool pair = end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n';
            start = end + (pair ? 2 : 1);
        }

        sections._current?.DropBlankTail();
        return sections;
    }

    private static void Refuse(bool tooLarge, string what, int line)
    {
        if (tooLarge) throw new InputProblemException(new InputProblem(what, $"line {line}", "Give the draft alone, without pictures or long private sections."));
    }

    private void Take(int start, int end, int line)
    {
        ReadOnlySpan<char> written = Text.AsSpan(start, end - start);
        ReadOnlySpan<char> trimmed = written.Trim();
        if (WifSectionNames.TryHeading(trimmed, out ReadOnlySpan<char> name))
        {
            Open(name, line);
            return;
        }

        if (_current is { IsKept: true })
        {
            _current.Lines.Add(written.ToString());
            return;
        }

        if (trimmed.IsEmpty || trimmed[0] == ';') return;
        int equals = written.IndexOf('=');
        if (_current is null || equals < 0)
        {
            _warnings.Add(_current?.Name ?? "", "", line, $"The line \"{Shortened(trimmed)}\" is not of the form key=value inside a section; it is left out.");
            return;
        }

        (int keyStart, int keyLength) = Trimmed(start, start + equals);
        (int valueStart, int valueLength) = Trimmed(start + equals + 1, end);
        if (keyLength == 0) _warnings.Add(_current.Name, "", line, "A line has nothing before its equals sign; it is left out.");
        else _current.Entries.Add(new WifEntry(keyStart, keyLength, valueStart, valueLength, line));
    }

    private void Open(ReadOnlySpan<char> written, int line)
    {
        _current?.DropBlankTail();
        string name = WifSectionNames.Canonical(written);
        if (_byName.TryGetValue(name, out WifRawSection? earlier))
        {
            _warnings.Add(name, "", line, $"The section began in line {earlier.Line} already; the two parts are joined.");
            _current = earlier;
            return;
        }

        _current = new WifRawSection(written.ToString(), name, line);
        _byName.Add(name, _current);
        _inFile.Add(_current);
        if (!WifSectionNames.IsStandard(name) && !WifSectionNames.IsPrivate(name))
        {
            _warnings.Add(name, "", line, "The standard does not know this section; it is kept word for word.");
        }
    }

    private (int Start, int Length) Trimmed(int start, int end)
    {
        while (start < end && char.IsWhiteSpace(Text[start])) start++;
        while (end > start && char.IsWhiteSpace(Text[end - 1])) end--;
        return (start, end - start);
    }

    public static string Shortened(ReadOnlySpan<char> text) => text.Length <= 40 ? text.ToString() : $"{text[..40]}…";
}
