namespace Clothwright.Interchange.Wif;

/// <summary>Reads sections whose keys are numbers.</summary>
internal sealed class WifNumberedReader(WifSections sections, WifWarnings warnings, List<WifExtraKey> extras)
{
    /// <summary>Makes something of the value of a line; false if nothing can be made of it (the reader has then warned).</summary>
    public delegate bool ValueReader<T>(string section, WifEntry entry, ReadOnlySpan<char> value, out T made);

    public WifNumbered<string> Words(string name, int highest) => Read<string>(name, 1, highest, ReadWords) ?? WifNumbered.None<string>();

    public WifNumbered<double> Reals(string name, int highest) => Read<double>(name, 1, highest, ReadReal) ?? WifNumbered.None<double>();

    public WifNumbered<int> Wholes(string name, int highest) => Read<int>(name, 1, highest, ReadWhole) ?? WifNumbered.None<int>();

    /// <summary>Reads whole numbers and gives each a meaning; lines whose number has none are left out.</summary>
    public WifNumbered<int> Wholes(string name, int highest, Func<WifEntry, int, int?> meaning) => Read<int>(
        name,
        1,
        highest,
        (string section, WifEntry entry, ReadOnlySpan<char> value, out int made) =>
        {
            int? meant = ReadWhole(section, entry, value, out int number) ? meaning(entry, number) : null;
            made = meant ?? 0;
            return meant is not null;
        }) ?? WifNumbered.None<int>();

    /// <summary>Reads a section; null if the file has none.</summary>
    /// <param name="name">The section.</param>
    /// <param name="lowest">The lowest number it may hold.</param>
    /// <param name="highest">The highest number it may hold; lines beyond are left out with one warning.</param>
    /// <param name="reader">Reads the values.</param>
    public WifNumbered<T>? Read<T>(string name, int lowest, int highest, ValueReader<T> reader)
        where T : notnull
    {
        if (sections.Find(name) is not { } section) return null;
        var seen = new Dictionary<int, WifEntry>();
        var lines = new List<KeyValuePair<int, T>>();
        int beyond = 0;
        WifEntry firstBeyond = default;
        foreach (WifEntry entry in section.Entries)
        {
            if (!WifNumbers.TryWhole(entry.Key(sections.Text), out int number))
            {
                Warn(name, entry, "The key is not a number; it is kept as it is.");
                extras.Add(new WifExtraKey(name, entry.Key(sections.Text).ToString(), entry.Value(sections.Text).ToString()));
            }
            else if (number < lowest)
            {
                Warn(name, entry, $"Numbers begin at {lowest}; the line is left out.");
            }
            else if (number > highest)
            {
                if (beyond++ == 0) firstBeyond = entry;
            }
            else if (!seen.TryAdd(number, entry))
            {
                if (entry.Value(sections.Text).SequenceEqual(seen[number].Value(sections.Text))) continue;
                Warn(name, entry, $"The number stands in line {seen[number].Line} already with another value; the first is kept.");
            }
            else if (reader(name, entry, entry.Value(sections.Text), out T made))
            {
                lines.Add(new(number, made));
            }
        }

        if (beyond > 0) Warn(name, firstBeyond, $"{beyond} lines are numbered above {highest}, which is how many there are; they are left out.");
        return WifNumbered.Of<T>(lines);
    }

    public void Warn(string section, WifEntry entry, string what) =>
        warnings.Add(section, WifSections.Shortened(entry.Key(sections.Text)), entry.Line, what);

    private static bool ReadWords(string section, WifEntry entry, ReadOnlySpan<char> value, out string made)
    {
        made = value.ToString();
        return true;
    }

    private bool ReadReal(string section, WifEntry entry, ReadOnlySpan<char> value, out double made)
    {
        double? real = WifSectionReader.ReadReal(sections.Text, entry, section, warnings);
        made = real ?? 0;
        return real is not null;
    }

    private bool ReadWhole(string section, WifEntry entry, ReadOnlySpan<char> value, out int made)
    {
        ReadOnlySpan<char> plain = WifNumbers.WithoutComment(value);
        if (WifNumbers.TryWhole(plain, out made) && made is >= 0 and < int.MaxValue) return true;
        Warn(section, entry, $"\"{WifSections.Shortened(plain)}\" is not a whole number, 0 or more; the line is left out.");
        return false;
    }
}
