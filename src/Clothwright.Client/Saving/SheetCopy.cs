using System.Collections.Immutable;

namespace Clothwright.Client.Saving;

/// <summary>What this browser knows of the studio's copy of a worksheet.</summary>
internal sealed record SheetCopy
{
    // Beyond this many, the oldest is forgotten, and undo ends where it came in.
    private const int MostArrivals = 40;

    /// <summary>Name of the work, for the list.</summary>
    public string Title { get; init; } = "";

    /// <summary>The version last agreed on; 0 for one that the studio never had.</summary>
    public int Version { get; init; }

    /// <summary>The document of that version; null where it is not known.</summary>
    public string? Document { get; init; }

    /// <summary>Whether something here is not sent yet.</summary>
    public bool Unsent { get; init; }

    /// <summary>What came from elsewhere, the oldest first.</summary>
    public ImmutableArray<Arrival> Arrivals { get; init; } = [];

    /// <summary>The first step that undo may go back to.</summary>
    public int Floor { get; init; }

    /// <summary>The copy once something more has come from elsewhere.</summary>
    public SheetCopy With(Arrival arrival)
    {
        ImmutableArray<Arrival> all = Arrivals.Add(arrival);
        return all.Length <= MostArrivals ? this with { Arrivals = all } : this with { Arrivals = all.RemoveAt(0), Floor = Math.Max(Floor, all[0].UpTo + 1) };
    }

    /// <summary>The copy once a step is kept that knows of all that came.</summary>
    /// <param name="step">The step.</param>
    public SheetCopy Stepped(int step) => Arrivals.All(a => a.UpTo < step)
        ? this
        : this with { Arrivals = [.. Arrivals.Select(a => a with { UpTo = Math.Min(a.UpTo, step - 1) }).Where(a => a.UpTo >= 0)] };
}
