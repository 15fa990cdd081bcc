using System.Data;
using Clothwright.Core.Quantities;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace Clothwright.Storage.PostgreSql;

/// <summary>A studio in a PostgreSQL database. Several servers may share it: one writes at a time.</summary>
public sealed class PostgreSqlStudio : IStudioTables
{
    // Any number that no other program takes in this database.
    private const long WritingLock = 0x436C_6F74_6877_7269;

    private readonly DbContextOptions<StudioContext> _options;

    private PostgreSqlStudio(string connection) => _options = OptionsOf(connection);

    /// <summary>Opens the studio of a database: makes what is missing and brings older tables up to date.</summary>
    /// <param name="connection">The database, as <see cref="Read"/> gives it.</param>
    /// <param name="clock">The time of saves.</param>
    /// <param name="cancel">Calls it off.</param>
    /// <exception cref="NpgsqlException">The database cannot be reached or does not let anyone in.</exception>
    public static async Task<Studio> OpenAsync(string connection, TimeProvider clock, CancellationToken cancel = default)
    {
        var tables = new PostgreSqlStudio(connection);
        await using StudioContext studio = tables.CreateDbContext();
        await studio.Database.MigrateAsync(cancel);
        return new Studio(tables, clock);
    }

    /// <summary>Reads the words that name a database.</summary>
    /// <param name="words">For example <c>Host=localhost;Database=weaving;Username=school</c>. A password is better kept in the password file that PostgreSQL's programs share.</param>
    /// <param name="where">Place to name in a problem.</param>
    public static Parsed<string> Read(string words, string where = "database")
    {
        ArgumentNullException.ThrowIfNull(words);
        const string Mend = "Write for example Host=localhost;Database=weaving;Username=school.";
        try
        {
            var builder = new NpgsqlConnectionStringBuilder(words);
            if (string.IsNullOrWhiteSpace(builder.Host)) return new InputProblem("No host is named on which the database is kept.", where, Mend);
            return builder.ToString();
        }
        catch (Exception fault) when (fault is ArgumentException or FormatException or InvalidOperationException)
        {
            return new InputProblem($"The database cannot be understood: {fault.Message}", where, Mend);
        }
    }

    /// <summary>The database in words, without its password.</summary>
    /// <param name="connection">The database, as <see cref="Read"/> gives it.</param>
    public static string InWords(string connection)
    {
        var builder = new NpgsqlConnectionStringBuilder(connection);
        return $"the database {builder.Database ?? builder.Username} on {builder.Host}";
    }

    /// <summary>Lets go of the database.</summary>
    /// <param name="connection">The database, as <see cref="Read"/> gives it.</param>
    public static void Close(string connection)
    {
        using var one = new NpgsqlConnection(connection);
        NpgsqlConnection.ClearPool(one);
    }

    /// <inheritdoc />
    public StudioContext CreateDbContext() => new(_options);

    /// <inheritdoc />
    public Task<IDbContextTransaction> BeginReadingAsync(StudioContext studio, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(studio);
        return studio.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancel);
    }

    /// <inheritdoc />
    public async Task<IDbContextTransaction> BeginWritingAsync(StudioContext studio, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(studio);
        // Each statement sees what was committed before it; the lock, held until the end, lets no other writer in between.
        IDbContextTransaction writing = await studio.Database.BeginTransactionAsync(IsolationLevel.ReadCommitted, cancel);
        try
        {
            await studio.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({WritingLock})", cancel);
            await studio.Database.ExecuteSqlAsync($"SET LOCAL synchronous_commit = on", cancel);
            return writing;
        }
        catch
        {
            await writing.DisposeAsync();
            throw;
        }
    }

    internal static DbContextOptions<StudioContext> OptionsOf(string connection) => new DbContextOptionsBuilder<StudioContext>()
        .UseNpgsql(connection, postgres => postgres.MigrationsAssembly(typeof(PostgreSqlStudio).Assembly.GetName().Name))
        .Options;
}
