using Clothwright.Interchange.Http;
using Clothwright.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Shelf;

/// <summary>Yarn set aside for worksheets: one entry for each yarn and worksheet.</summary>
public sealed class YarnReservations
{
    private readonly StudioWork _work;

    internal YarnReservations(StudioWork work) => _work = work;

    /// <summary>Everything that is set aside, by yarn and worksheet.</summary>
    /// <param name="cancel">Calls it off.</param>
    public Task<Kept<YarnReservation>[]> ListAsync(CancellationToken cancel = default) => _work.ReadAsync(
        async studio => (await studio.Reservations.OrderBy(r => r.YarnId).ThenBy(r => r.WorksheetId).ToListAsync(cancel)).Select(Kept).ToArray(), cancel);

    /// <summary>Sets yarn aside, or changes how much.</summary>
    /// <param name="reservation">What is set aside; a problem in it is thrown as an <see cref="Core.Quantities.InputProblemException"/>.</param>
    /// <param name="basedOn">The version it was made from; null for a new one.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    /// <returns>What came of it; a yarn that is not there counts as not there.</returns>
    public Task<SaveOutcome> KeepAsync(YarnReservation reservation, int? basedOn, CancellationToken cancel = default)
    {
        YarnReservation sound = RecordChecks.Checked(reservation).Value;
        return _work.WriteAsync<SaveOutcome>(
            async studio =>
            {
                if (!await studio.Yarns.AnyAsync(y => y.Id == sound.YarnId, cancel)) return new SaveOutcome.NotThere();
                ReservationRow? held = await studio.Reservations.FindAsync([sound.YarnId, sound.WorksheetId], cancel);
                if (held is null && basedOn is not null) return new SaveOutcome.NotThere();
                if (held is not null && held.Version != basedOn) return new SaveOutcome.Conflict(held.Version);
                ReservationRow row = Row(sound, (held?.Version ?? 0) + 1);
                if (held is null) studio.Add(row);
                else studio.Entry(held).CurrentValues.SetValues(row);
                return new SaveOutcome.Saved(row.Version, held is null);
            },
            cancel);
    }

    /// <summary>Lets yarn go that was set aside.</summary>
    /// <param name="yarnId">The yarn.</param>
    /// <param name="worksheetId">The worksheet.</param>
    /// <param name="basedOn">The version that was seen last.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<SaveOutcome> RemoveAsync(string yarnId, string worksheetId, int basedOn, CancellationToken cancel = default) => _work.WriteAsync<SaveOutcome>(
        async studio =>
        {
            if (await studio.Reservations.FindAsync([yarnId, worksheetId], cancel) is not { } held) return new SaveOutcome.NotThere();
            if (held.Version != basedOn) return new SaveOutcome.Conflict(held.Version);
            studio.Remove(held);
            return new SaveOutcome.Saved(held.Version, false);
        },
        cancel);

    internal static ReservationRow Row(YarnReservation reservation, int version) => new()
    {
        YarnId = reservation.YarnId,
        WorksheetId = reservation.WorksheetId,
        Version = version,
        Kilograms = reservation.Grams / 1000,
        Note = reservation.Note,
    };

    internal static Kept<YarnReservation> Kept(ReservationRow row) => new(
        row.Version,
        new YarnReservation { YarnId = row.YarnId, WorksheetId = row.WorksheetId, Grams = row.Kilograms * 1000, Note = row.Note });
}
