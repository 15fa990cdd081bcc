using Clothwright.Core.Colours;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Wif;

/// <summary>Reads the colours of a file and knows which colour numbers mean something.</summary>
internal sealed class WifColourReader
{
    private readonly string _text;
    private readonly WifNumberedReader _numbered;
    private readonly WifWarnings _warnings;
    private readonly WifColourRange _range;
    private readonly int _most;
    private readonly int _entries;
    private readonly int _nought;
    private readonly bool _hasTable;
    private readonly Dictionary<int, SrgbColour> _table = [];

    public WifColourReader(WifSections sections, WifNumberedReader numbered, WifWarnings warnings, ReadingLimits limits)
    {
        _text = sections.Text;
        _numbered = numbered;
        _warnings = warnings;
        Section = new WifSectionReader(sections, WifSectionNames.ColorPalette, warnings);
        _most = limits.MaxPaletteEntries;
        int? entries = Section.Count("Entries", _most, "colours");
        _entries = entries ?? 0;
        ReadForm();
        WifRawSection? table = sections.Find(WifSectionNames.ColorTable);
        _range = ReadRange(table is not null);
        if (table is null) return;
        _hasTable = true;
        foreach ((int number, SrgbColour colour) in numbered.Read<SrgbColour>(table.Name, 0, _most, ReadColour)!) _table.Add(number, colour);
        if (entries > _table.Count) warnings.Add(table.Name, "", table.Line, $"{entries} colours are declared and {_table.Count} are listed.");
        if (!_table.Remove(0, out SrgbColour first)) return;

        // Numbers begin at 1: a colour 0 is given the first number beyond all others, or the first free one.
        _nought = Math.Max(_entries, Highest) + 1;
        if (_nought > _most) _nought = Enumerable.Range(1, _most).FirstOrDefault(n => !_table.ContainsKey(n));
        warnings.Add(table.Name, "0", table.Line, $"Colours are numbered from 1; colour 0 becomes colour {_nought}.");
        if (_nought > 0) _table.Add(_nought, first);
    }

    public WifSectionReader Section { get; }

    private int Highest => _table.Count == 0 ? 0 : _table.Keys.Max();

    public WifPalette? Palette() => Section.IsPresent || _hasTable || _table.Count > 0
        ? new WifPalette(Math.Max(_entries, Highest), WifNumbered.Of(_table))
        : null;

    /// <summary>Puts the colour written behind a system's palette number into the table, if the table has none of that number.</summary>
    public void TakeWritten(WifSectionReader system)
    {
        Span<double> parts = stackalloc double[4];
        if (system.Find("Color") is not { } entry || Default(entry, parts) != 4 || parts[0] == 0) return;
        int number = (int)parts[0];
        SrgbColour written = _range.ToColour(parts[1], parts[2], parts[3]);
        if (!_table.TryGetValue(number, out SrgbColour listed))
        {
            if (_hasTable) system.Warn(entry, $"Colour {number} is not in the colour table; the colour written behind it is put there.");
            _table.Add(number, written);
        }
        else if (listed != written)
        {
            system.Warn(entry, $"The colour written behind number {number} differs from the colour table; the table is used.");
        }
    }

    /// <summary>Colour of a system: a palette number, alone or followed by the colour itself.</summary>
    public int? ReadDefault(WifSectionReader system)
    {
        if (system.Find("Color") is not { ValueLength: > 0 } entry) return null;
        Span<double> parts = stackalloc double[4];
        if (Default(entry, parts) is not (1 or 4))
        {
            system.Warn(entry, $"\"{WifSections.Shortened(entry.Value(_text))}\" is not a colour number, alone or with red, green and blue behind it; it is left out.");
            return null;
        }

        int? known = Known((int)parts[0]);
        if (known is null) system.Warn(entry, $"Colour {(int)parts[0]} is not in the colour table; it is left out.");
        return known;
    }

    /// <summary>Colours thread by thread. A number that is not in the table says nothing: the thread takes the default.</summary>
    public WifNumbered<int> ReadNumbers(string name, int count)
    {
        int unknown = 0;
        WifEntry first = default;
        WifNumbered<int> numbers = _numbered.Wholes(name, count, (entry, number) =>
        {
            if (Known(number) is { } known) return known;
            if (unknown++ == 0) first = entry;
            return null;
        });
        if (unknown > 0) _numbered.Warn(name, first, $"Colour {WifNumbers.WithoutComment(first.Value(_text))} is not in the colour table; {unknown} threads take the default colour.");
        return numbers;
    }

    // Without a table every number above 0 may mean something to whoever wrote it.
    private int? Known(int number) => number switch
    {
        0 when _nought > 0 => _nought,
        _ when _table.ContainsKey(number) => number,
        > 0 when !_hasTable && _table.Count == 0 => number,
        _ => null,
    };

    private void ReadForm()
    {
        if (Section.Find("Form") is not { ValueLength: > 0 } form) return;
        ReadOnlySpan<char> value = WifNumbers.WithoutComment(form.Value(_text));
        if (!value.Equals("RGB", StringComparison.OrdinalIgnoreCase)) Section.Warn(form, $"\"{WifSections.Shortened(value)}\" is read as RGB.");
    }

    private WifColourRange ReadRange(bool hasTable)
    {
        if (Section.Find("Range") is not { } entry)
        {
            if (Section.IsPresent || hasTable) _warnings.Add(WifSectionNames.ColorPalette, "Range", Section.Line, "The scale of the colours is not said; 0 to 255 is assumed.");
            return WifColourRange.EightBits;
        }

        ReadOnlySpan<char> value = WifNumbers.WithoutComment(entry.Value(_text));
        Span<double> parts = stackalloc double[2];
        if (Parts(value, parts) == 2 && parts[0] < parts[1] && double.IsFinite(255 / (parts[1] - parts[0]))) return new WifColourRange(parts[0], parts[1]);
        Section.Warn(entry, $"\"{WifSections.Shortened(value)}\" is not a scale, two rising numbers; 0 to 255 is assumed.");
        return WifColourRange.EightBits;
    }

    private bool ReadColour(string section, WifEntry entry, ReadOnlySpan<char> value, out SrgbColour colour)
    {
        ReadOnlySpan<char> plain = WifNumbers.WithoutComment(value);
        Span<double> parts = stackalloc double[3];
        colour = default;
        if (Parts(plain, parts) != 3)
        {
            _numbered.Warn(section, entry, $"\"{WifSections.Shortened(plain)}\" is not a colour, three numbers with commas; the line is left out.");
            return false;
        }

        if (!_range.Holds(parts[0]) || !_range.Holds(parts[1]) || !_range.Holds(parts[2]))
        {
            _numbered.Warn(section, entry, $"\"{WifSections.Shortened(plain)}\" goes beyond the scale {WifNumbers.Written(_range.Low)} to {WifNumbers.Written(_range.High)}; it is clipped.");
        }

        colour = _range.ToColour(parts[0], parts[1], parts[2]);
        return true;
    }

    private int Default(WifEntry entry, Span<double> parts)
    {
        int count = Parts(WifNumbers.WithoutComment(entry.Value(_text)), parts);
        return parts[0] >= 0 && parts[0] <= _most && parts[0] == Math.Floor(parts[0]) ? count : -1;
    }

    // How many numbers a list with commas holds; -1 if something else stands in it, or more than fit.
    private static int Parts(ReadOnlySpan<char> text, Span<double> parts)
    {
        int count = 0;
        foreach (Range range in text.Split(','))
        {
            if (count == parts.Length || !WifNumbers.TryReal(text[range].Trim(), out parts[count], out _)) return -1;
            count++;
        }

        return count;
    }
}
