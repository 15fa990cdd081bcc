using System.Collections.Immutable;

namespace Clothwright.Interchange.Wif;

/// <summary>Collects warnings while a file is read; beyond a limit they are counted, not kept.</summary>
internal sealed class WifWarnings(int most)
{
    private readonly List<WifWarning> _kept = [];
    private int _beyond;

    public void Add(string section, string key, int line, string what)
    {
        if (_kept.Count < most) _kept.Add(new WifWarning(section, key, line, what));
        else _beyond++;
    }

    public ImmutableArray<WifWarning> ToArray() => _beyond == 0
        ? [.. _kept]
        : [.. _kept, new WifWarning("", "", 0, $"{_beyond} more warnings are not told.")];
}
