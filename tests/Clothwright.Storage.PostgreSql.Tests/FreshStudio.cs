using Clothwright.Storage.PostgreSql;
using Npgsql;

namespace Clothwright.Storage.Tests;

/// <summary>A studio in a database of its own, gone with the test.</summary>
internal sealed partial class FreshStudio : IAsyncDisposable
{
    // Names the server: an account that may make databases.
    private const string Server = "CLOTHWRIGHT_POSTGRESQL";

    private FreshStudio(string connection, Studio studio)
    {
        Connection = connection;
        Studio = studio;
    }

    public string Connection { get; }

    public Studio Studio { get; private set; }

    public static async Task<FreshStudio> OpenAsync()
    {
        string connection = await NewDatabaseAsync();
        return new FreshStudio(connection, await PostgreSqlStudio.OpenAsync(connection, new MinuteClock()));
    }

    /// <summary>The tables themselves.</summary>
    public StudioContext Tables() => new(PostgreSqlStudio.OptionsOf(Connection));

    /// <summary>Lets go of the database and opens it again, as after a restart.</summary>
    public async Task ReopenAsync()
    {
        PostgreSqlStudio.Close(Connection);
        Studio = await PostgreSqlStudio.OpenAsync(Connection, new MinuteClock());
    }

    public async ValueTask DisposeAsync()
    {
        PostgreSqlStudio.Close(Connection);
        await AskAsync($"DROP DATABASE \"{new NpgsqlConnectionStringBuilder(Connection).Database}\" WITH (FORCE)");
    }

    private static async Task<string> NewDatabaseAsync()
    {
        string name = $"clothwright_{Guid.NewGuid():N}";
        await AskAsync($"CREATE DATABASE \"{name}\"");
        return new NpgsqlConnectionStringBuilder(Administration()) { Database = name, Pooling = true }.ToString();
    }

    private static string Administration() => Environment.GetEnvironmentVariable(Server) is { Length: > 0 } server
        ? server
        : throw new InvalidOperationException($"{Server} names no PostgreSQL server; tests/with-postgresql.sh starts one.");

    private static async Task AskAsync(string statement)
    {
        await using var connection = new NpgsqlConnection(Administration());
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(statement, connection);
        await command.ExecuteNonQueryAsync();
    }
}
