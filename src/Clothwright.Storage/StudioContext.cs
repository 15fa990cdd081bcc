using Clothwright.Storage.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Clothwright.Storage;

/// <summary>The tables of a studio, for any database.</summary>
/// <param name="options">Which database, and where.</param>
public sealed class StudioContext(DbContextOptions<StudioContext> options) : DbContext(options)
{
    internal DbSet<WorksheetRow> Worksheets => Set<WorksheetRow>();

    internal DbSet<WorksheetSaveRow> WorksheetSaves => Set<WorksheetSaveRow>();

    internal DbSet<YarnRow> Yarns => Set<YarnRow>();

    internal DbSet<YarnPhotoRow> YarnPhotos => Set<YarnPhotoRow>();

    internal DbSet<ReservationRow> Reservations => Set<ReservationRow>();

    internal DbSet<BenchRow> Benches => Set<BenchRow>();

    internal DbSet<SwatchRow> Swatches => Set<SwatchRow>();

    internal DbSet<WeavingLogRow> WeavingLog => Set<WeavingLogRow>();

    /// <inheritdoc />
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        ArgumentNullException.ThrowIfNull(configurationBuilder);
        // Whole microseconds as a number: every database sorts it, and every value comes back as it went in.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<MicrosecondConverter>();
    }

    /// <inheritdoc />
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ArgumentNullException.ThrowIfNull(modelBuilder);
        modelBuilder.Entity<WorksheetRow>(worksheet =>
        {
            worksheet.ToTable("worksheets").HasKey(w => w.Id);
            worksheet.Property(w => w.Version).IsConcurrencyToken();
        });
        modelBuilder.Entity<WorksheetSaveRow>(save =>
        {
            save.ToTable("worksheet_saves").HasKey(s => new { s.WorksheetId, s.Version });
            save.HasOne<WorksheetRow>().WithMany().HasForeignKey(s => s.WorksheetId);
        });
        modelBuilder.Entity<YarnRow>(yarn =>
        {
            Keep(yarn, "yarns");
            yarn.HasMany(y => y.Fibres).WithOne().HasForeignKey(f => f.YarnId).OnDelete(DeleteBehavior.Cascade);
            yarn.HasMany(y => y.Packages).WithOne().HasForeignKey(p => p.YarnId).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<YarnFibreRow>().ToTable("yarn_fibres").HasKey(f => new { f.YarnId, f.Place });
        modelBuilder.Entity<PackageRow>().ToTable("packages").HasKey(p => new { p.YarnId, p.Place });
        // Neither refers to the yarn's row: that gives way to a new one at every save.
        modelBuilder.Entity<YarnPhotoRow>(photo =>
        {
            photo.ToTable("yarn_photos").HasKey(p => p.Id);
            photo.HasIndex(p => p.YarnId);
        });
        modelBuilder.Entity<ReservationRow>(reservation =>
        {
            reservation.ToTable("yarn_reservations").HasKey(r => new { r.YarnId, r.WorksheetId });
            reservation.Property(r => r.Version).IsConcurrencyToken();
        });
        modelBuilder.Entity<BenchRow>(bench =>
        {
            bench.ToTable("bench").HasKey(b => b.Id);
            bench.Property(b => b.Id).ValueGeneratedNever();
            bench.Property(b => b.Version).IsConcurrencyToken();
            bench.HasMany(b => b.Looms).WithOne().HasForeignKey(l => l.BenchId).OnDelete(DeleteBehavior.Cascade);
            bench.HasMany(b => b.Reeds).WithOne().HasForeignKey(r => r.BenchId).OnDelete(DeleteBehavior.Cascade);
            bench.HasMany(b => b.Heddles).WithOne().HasForeignKey(h => h.BenchId).OnDelete(DeleteBehavior.Cascade);
            bench.HasMany(b => b.WarpingTools).WithOne().HasForeignKey(t => t.BenchId).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<LoomRow>().ToTable("looms").HasKey(l => new { l.BenchId, l.Place });
        modelBuilder.Entity<ReedRow>().ToTable("reeds").HasKey(r => new { r.BenchId, r.Place });
        modelBuilder.Entity<HeddleRow>().ToTable("heddles").HasKey(h => new { h.BenchId, h.Place });
        modelBuilder.Entity<WarpingToolRow>().ToTable("warping_tools").HasKey(t => new { t.BenchId, t.Place });
        modelBuilder.Entity<SwatchRow>(swatch => Keep(swatch, "swatches"));
        modelBuilder.Entity<WeavingLogRow>(entry =>
        {
            Keep(entry, "weaving_log");
            entry.HasIndex(e => new { e.WorksheetId, e.Begun });
        });
    }

    private static void Keep<T>(Microsoft.EntityFrameworkCore.Metadata.Builders.EntityTypeBuilder<T> row, string table)
        where T : class, IKeptRow
    {
        row.ToTable(table).HasKey(r => r.Id);
        row.Property(r => r.Version).IsConcurrencyToken();
    }

    private sealed class MicrosecondConverter() : ValueConverter<DateTimeOffset, long>(
        time => (time.UtcTicks - DateTimeOffset.UnixEpoch.Ticks) / TimeSpan.TicksPerMicrosecond,
        microseconds => DateTimeOffset.UnixEpoch.AddTicks(microseconds * TimeSpan.TicksPerMicrosecond));
}
