namespace Clothwright.Interchange.Wif;

/// <summary>How many of a thing a file declares, and how many it uses.</summary>
internal sealed class WifTally(string thing, int most, int? declared)
{
    private WifEntry? _firstBeyond;
    private int _told = declared ?? 0;

    public string Thing { get; } = thing;

    public int Most { get; } = most;

    public int? Declared { get; } = declared;

    /// <summary>The highest number used.</summary>
    public int Used { get; private set; }

    /// <summary>As many as are declared, or as are used if that is more.</summary>
    public int Count => Math.Max(Declared ?? 0, Used);

    public void Take(int number, WifEntry entry)
    {
        Used = Math.Max(Used, number);
        if (number > _told) _firstBeyond ??= entry;
    }

    /// <summary>The first line that went beyond what was declared or told so far; null if none did.</summary>
    public WifEntry? TakeNews()
    {
        WifEntry? news = _firstBeyond;
        _firstBeyond = null;
        _told = Math.Max(_told, Used);
        return news;
    }
}
