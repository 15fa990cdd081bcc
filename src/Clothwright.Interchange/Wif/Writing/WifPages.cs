using System.Collections.Immutable;
using System.Text;
using Clothwright.Core.Weaves;

namespace Clothwright.Interchange.Wif;

/// <summary>Sections while they are being written; bound together in the order of the standard at the end.</summary>
internal sealed class WifPages
{
    private readonly Dictionary<string, StringBuilder> _sections = new(StringComparer.Ordinal);

    /// <summary>Writes a key, and opens its section if need be.</summary>
    public void Key(string section, string key, string value) =>
        Page(section).Append(OneLine(key)).Append('=').Append(OneLine(value)).Append("\r\n");

    /// <summary>Writes a key if something is said.</summary>
    public void Said(string section, string key, string value)
    {
        if (value.Length > 0) Key(section, key, value);
    }

    public void Number(string section, string key, int? value)
    {
        if (value is { } number) Key(section, key, WifNumbers.Written(number));
    }

    public void Number(string section, string key, double? value)
    {
        if (value is { } number) Key(section, key, WifNumbers.Written(number));
    }

    /// <summary>Writes numbered lines; a section without lines is not opened.</summary>
    public void Lines<T>(string section, WifNumbered<T> lines, Func<T, string> written)
        where T : notnull
    {
        foreach ((int number, T value) in lines) Key(section, WifNumbers.Written(number), written(value));
    }

    /// <summary>Writes a plan; its section is opened even if every list is empty, for that is a plan too.</summary>
    public void Plan(string section, WifNumbered<ShaftSet>? plan)
    {
        if (plan is null) return;
        Page(section);
        Lines(section, plan, static set => string.Join(',', set.Members()));
    }

    public string Bind(ImmutableArray<WifSection> kept)
    {
        ImmutableArray<string> written = [.. WifSectionNames.InOrder.Where(_sections.ContainsKey)];
        ImmutableArray<WifSection> ordered = [.. kept.OrderBy(static section => Rank(section.Name))];
        foreach (string name in written) List(name);
        foreach (WifSection section in ordered) List(section.Name);

        var file = new StringBuilder();
        foreach (string name in WifSectionNames.InOrder.Where(_sections.ContainsKey))
        {
            Open(name).Append(_sections[name]);
        }

        foreach (WifSection section in ordered)
        {
            Open(section.Name);
            foreach (string line in section.Lines) file.Append(line).Append("\r\n");
        }

        return file.ToString();

        StringBuilder Open(string name) => file.Append(file.Length == 0 ? "[" : "\r\n[").Append(name).Append("]\r\n");

        void List(string name)
        {
            if (name is not (WifSectionNames.Wif or WifSectionNames.Contents)) Key(WifSectionNames.Contents, name, "true");
        }
    }

    // Pictures first, then the rest as it stood.
    private static int Rank(string name)
    {
        int place = WifSectionNames.InOrder.IndexOf(WifSectionNames.Canonical(name));
        return place < 0 ? int.MaxValue : place;
    }

    private StringBuilder Page(string section)
    {
        if (!_sections.TryGetValue(section, out StringBuilder? page)) _sections.Add(section, page = new StringBuilder());
        return page;
    }

    private static string OneLine(string text) =>
        text.AsSpan().ContainsAny('\r', '\n', '\0') ? text.Replace('\r', ' ').Replace('\n', ' ').Replace('\0', ' ').Trim() : text.Trim();
}
