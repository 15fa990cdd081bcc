using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Clothwright.Storage.Sqlite;

/// <summary>Sets each connection up so that a committed save has been handed to the disk, and references hold.</summary>
internal sealed class DurablePragmas : DbConnectionInterceptor
{
    // The journal mode is kept in the file; the other two last as long as the connection.
    private const string Pragmas = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using DbCommand command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = Pragmas;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
