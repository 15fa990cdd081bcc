using Clothwright.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage;

/// <summary>The one way in which yarns, swatch records and entries of the weaving log are saved and removed.</summary>
internal static class KeptRows
{
    /// <summary>Saves a row that is new, or takes the place of the one it was based on.</summary>
    /// <param name="studio">The tables, with a transaction open.</param>
    /// <param name="row">The row as it is to be.</param>
    /// <param name="held">What stands under its id, with its parts; null if nothing.</param>
    /// <param name="basedOn">The version it was made from; null for something new.</param>
    /// <param name="cancel">Calls it off.</param>
    public static async Task<SaveOutcome> KeepAsync<T>(this StudioContext studio, T row, T? held, int? basedOn, CancellationToken cancel)
        where T : class, IKeptRow
    {
        if (held is null)
        {
            if (basedOn is not null) return new SaveOutcome.NotThere();
            row.Version = 1;
        }
        else
        {
            if (held.Version != basedOn) return new SaveOutcome.Conflict(held.Version);
            row.Version = held.Version + 1;
            studio.Remove(held);
            // The parts go first, so that those that come may have the same places.
            await studio.SaveChangesAsync(cancel);
        }

        studio.Add(row);
        return new SaveOutcome.Saved(row.Version, held is null);
    }

    /// <summary>Removes what stands under an id, if it is still the version that was seen.</summary>
    public static SaveOutcome Drop<T>(this StudioContext studio, T? held, int basedOn)
        where T : class, IKeptRow
    {
        if (held is null) return new SaveOutcome.NotThere();
        if (held.Version != basedOn) return new SaveOutcome.Conflict(held.Version);
        studio.Remove(held);
        return new SaveOutcome.Saved(held.Version, false);
    }
}
