using System.Data;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Clothwright.Storage.Sqlite;

/// <summary>A studio in one SQLite file: write-ahead log, full synchronisation, references enforced.</summary>
public sealed class SqliteStudio : IStudioTables
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "studio.db";

    private readonly DbContextOptions<StudioContext> _options;
    private readonly string _connection;

    private SqliteStudio(string file)
    {
        _connection = new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true }.ToString();
        _options = OptionsOf(_connection);
    }

    /// <summary>Opens the studio of a folder: makes what is missing and brings older tables up to date.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="clock">The time of saves.</param>
    /// <param name="cancel">Calls it off.</param>
    /// <exception cref="IOException">The folder cannot be made.</exception>
    /// <exception cref="SqliteException">The file cannot be opened, or is no database.</exception>
    public static async Task<Studio> OpenAsync(string folder, TimeProvider clock, CancellationToken cancel = default)
    {
        var factory = new SqliteStudio(FileIn(folder));
        Directory.CreateDirectory(folder);
        await using StudioContext studio = factory.CreateDbContext();
        await studio.Database.MigrateAsync(cancel);
        return new Studio(factory, clock);
    }

    /// <summary>Lets go of the file, so that the folder can be moved or removed.</summary>
    /// <param name="folder">The data folder.</param>
    public static void Close(string folder)
    {
        using var connection = new SqliteConnection(new SqliteStudio(FileIn(folder))._connection);
        SqliteConnection.ClearPool(connection);
    }

    /// <inheritdoc />
    public StudioContext CreateDbContext() => new(_options);

    /// <inheritdoc />
    public async Task<IDbContextTransaction> BeginReadingAsync(StudioContext studio, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(studio);
        await studio.Database.OpenConnectionAsync(cancel);
        // Deferred: it never asks for the right to write, and sees the studio as it stands at its first look.
        return (await studio.Database.UseTransactionAsync(((SqliteConnection)studio.Database.GetDbConnection()).BeginTransaction(deferred: true), cancel))!;
    }

    /// <inheritdoc />
    public Task<IDbContextTransaction> BeginWritingAsync(StudioContext studio, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(studio);
        return studio.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancel);
    }

    internal static DbContextOptions<StudioContext> OptionsOf(string connection) => new DbContextOptionsBuilder<StudioContext>()
        .UseSqlite(connection, sqlite => sqlite.MigrationsAssembly(typeof(SqliteStudio).Assembly.GetName().Name))
        .AddInterceptors(new DurablePragmas())
        .Options;

    private static string FileIn(string folder)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        return Path.Combine(Path.GetFullPath(folder), FileName);
    }
}
