using Microsoft.EntityFrameworkCore.Design;

namespace Clothwright.Storage.Sqlite;

/// <summary>Gives the migrations tool the tables, without a studio.</summary>
internal sealed class DesignTimeStudio : IDesignTimeDbContextFactory<StudioContext>
{
    public StudioContext CreateDbContext(string[] args) => new(SqliteStudio.OptionsOf("Data Source=:memory:"));
}
