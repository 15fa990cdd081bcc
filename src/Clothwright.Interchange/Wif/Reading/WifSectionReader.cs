using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Wif;

/// <summary>Reads the named keys of one section and says what is wrong with them.</summary>
internal sealed class WifSectionReader
{
    private readonly string _text;
    private readonly WifWarnings _warnings;
    private readonly Dictionary<string, WifEntry> _entries = new(StringComparer.Ordinal);
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    public WifSectionReader(WifSections sections, string name, WifWarnings warnings)
    {
        _text = sections.Text;
        Name = name;
        _warnings = warnings;
        WifRawSection? section = sections.Find(name);
        IsPresent = section is not null;
        Line = section?.Line ?? 0;
        foreach (WifEntry entry in section?.Entries ?? [])
        {
            string key = WifSectionNames.Canonical(entry.Key(_text));
            if (_entries.TryAdd(key, entry)) continue;
            if (!entry.Value(_text).SequenceEqual(_entries[key].Value(_text))) Warn(entry, $"The key stands in line {_entries[key].Line} already with another value; the first is kept.");
        }
    }

    public string Name { get; }

    public bool IsPresent { get; }

    public int Line { get; }

    public string Words(string key) => Find(key) is { } entry ? entry.Value(_text).ToString() : "";

    public string? WordsOrNone(string key) => Find(key) is { ValueLength: > 0 } entry ? entry.Value(_text).ToString() : null;

    /// <summary>A count of things; above the limit the whole file is refused.</summary>
    public int? Count(string key, int most, string things)
    {
        if (Find(key) is not { } entry) return null;
        ReadOnlySpan<char> value = WifNumbers.WithoutComment(entry.Value(_text));
        if (!WifNumbers.TryWhole(value, out int count) || count < 0)
        {
            Warn(entry, $"\"{WifSections.Shortened(value)}\" is not a count of {things}; it is left out.");
            return null;
        }

        if (count <= most) return count;
        throw new InputProblemException(new InputProblem(
            $"The file declares {value} {things}; at most {most} are read.",
            $"line {entry.Line}, [{Name}] {key}",
            $"Put the true number of {things} there, for example {key}=400."));
    }

    /// <summary>A number that has no part in the cloth: palette number, zoom.</summary>
    public int? Whole(string key)
    {
        if (Find(key) is not { ValueLength: > 0 } entry) return null;
        ReadOnlySpan<char> value = WifNumbers.WithoutComment(entry.Value(_text));
        if (WifNumbers.TryWhole(value, out int number) && number is >= 0 and < int.MaxValue) return number;
        Warn(entry, $"\"{WifSections.Shortened(value)}\" is not a whole number, 0 or more; it is left out.");
        return null;
    }

    public double? Real(string key)
    {
        if (Find(key) is not { ValueLength: > 0 } entry) return null;
        return ReadReal(_text, entry, Name, _warnings);
    }

    public bool? Truth(string key)
    {
        if (Find(key) is not { } entry) return null;
        ReadOnlySpan<char> value = WifNumbers.WithoutComment(entry.Value(_text));
        bool? truth = WifNumbers.Truth(value);
        if (truth is null) Warn(entry, $"\"{WifSections.Shortened(value)}\" is neither true nor false; it is left out.");
        return truth;
    }

    /// <summary>The entry of a key, for values that are read by hand.</summary>
    public WifEntry? Find(string key)
    {
        string canonical = WifSectionNames.Canonical(key);
        _asked.Add(canonical);
        return _entries.TryGetValue(canonical, out WifEntry entry) ? entry : null;
    }

    /// <summary>Keeps a key although it was asked for: its value was not understood.</summary>
    public void KeepAsWritten(string key) => _asked.Remove(WifSectionNames.Canonical(key));

    /// <summary>The keys nobody asked for.</summary>
    public IEnumerable<WifExtraKey> Extras()
    {
        foreach ((string key, WifEntry entry) in _entries)
        {
            if (_asked.Contains(key)) continue;
            yield return new WifExtraKey(Name, entry.Key(_text).ToString(), entry.Value(_text).ToString());
        }
    }

    public void Warn(WifEntry entry, string what) =>
        _warnings.Add(Name, WifSections.Shortened(entry.Key(_text)), entry.Line, what);

    public static double? ReadReal(string text, WifEntry entry, string section, WifWarnings warnings)
    {
        string key = WifSections.Shortened(entry.Key(text));
        ReadOnlySpan<char> value = WifNumbers.WithoutComment(entry.Value(text));
        if (!WifNumbers.TryReal(value, out double number, out bool commaForPoint)
            || (number != 0 && number is not (>= WifNumbers.LeastReal and <= WifNumbers.MostReal)))
        {
            warnings.Add(section, key, entry.Line, $"\"{WifSections.Shortened(value)}\" is not a number a spacing or thickness can have; it is left out.");
            return null;
        }

        if (commaForPoint) warnings.Add(section, key, entry.Line, $"\"{value}\" is written with a decimal comma; it is read as {WifNumbers.Written(number)}.");
        return number == 0 ? 0 : number;
    }
}
