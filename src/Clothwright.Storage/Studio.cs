using Clothwright.Storage.Benches;
using Clothwright.Storage.Bundles;
using Clothwright.Storage.Records;
using Clothwright.Storage.Rows;
using Clothwright.Storage.Shelf;
using Clothwright.Storage.Worksheets;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage;

/// <summary>Everything that one studio keeps.</summary>
public sealed class Studio
{
    private readonly StudioWork _work;

    /// <summary>A studio whose tables exist.</summary>
    /// <param name="tables">Opens the tables.</param>
    /// <param name="clock">The time of saves.</param>
    public Studio(IStudioTables tables, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(clock);
        _work = new StudioWork(tables, clock);
        Worksheets = new WorksheetArchive(_work);
        Shelf = new YarnShelf(_work);
        Photos = new YarnPhotos(_work);
        Reservations = new YarnReservations(_work);
        Bench = new BenchKeeper(_work);
        Swatches = new SwatchBook(_work);
        WeavingLog = new WeavingLogBook(_work);
        Bundles = new StudioBundles(_work);
    }

    /// <summary>Worksheets, every save of each.</summary>
    public WorksheetArchive Worksheets { get; }

    /// <summary>Yarns and their packages.</summary>
    public YarnShelf Shelf { get; }

    /// <summary>Photos of yarns.</summary>
    public YarnPhotos Photos { get; }

    /// <summary>Yarn set aside for worksheets.</summary>
    public YarnReservations Reservations { get; }

    /// <summary>Looms, reeds, heddles and warping tools.</summary>
    public BenchKeeper Bench { get; }

    /// <summary>Samples and their measurements.</summary>
    public SwatchBook Swatches { get; }

    /// <summary>Sittings at the loom.</summary>
    public WeavingLogBook WeavingLog { get; }

    /// <summary>Packing everything, and bringing it in again.</summary>
    public StudioBundles Bundles { get; }

    /// <summary>Whether nothing was ever kept here.</summary>
    /// <param name="cancel">Calls it off.</param>
    public Task<bool> IsBareAsync(CancellationToken cancel = default) => _work.ReadAsync(
        async studio => !await studio.Worksheets.AnyAsync(cancel) && !await HasRecordsAsync(studio, demo: true, cancel) && !await HasRecordsAsync(studio, demo: false, cancel),
        cancel);

    /// <summary>Whether nothing is kept here but the demo studio as it came, or nothing at all.</summary>
    /// <param name="cancel">Calls it off.</param>
    public Task<bool> IsOnlyDemoAsync(CancellationToken cancel = default) => _work.ReadAsync(studio => IsOnlyDemoAsync(studio, cancel), cancel);

    internal static async Task<bool> IsOnlyDemoAsync(StudioContext studio, CancellationToken cancel) =>
        !await studio.Worksheets.AnyAsync(w => !w.IsDemo || w.IsPutAway, cancel) && !await HasRecordsAsync(studio, demo: false, cancel);

    private static async Task<bool> HasRecordsAsync(StudioContext studio, bool demo, CancellationToken cancel) =>
        await studio.Yarns.AnyAsync(y => y.IsDemo == demo, cancel)
        || await studio.Benches.AnyAsync(b => b.IsDemo == demo, cancel)
        || (!demo && (await studio.YarnPhotos.AnyAsync(cancel) || await studio.Reservations.AnyAsync(cancel)))
        || await studio.Set<SwatchRow>().AnyAsync(s => s.IsDemo == demo, cancel)
        || await studio.Set<WeavingLogRow>().AnyAsync(e => e.IsDemo == demo, cancel);
}
