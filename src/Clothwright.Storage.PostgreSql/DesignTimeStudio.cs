using Microsoft.EntityFrameworkCore.Design;

namespace Clothwright.Storage.PostgreSql;

/// <summary>Gives the migrations tool the tables, without a studio.</summary>
internal sealed class DesignTimeStudio : IDesignTimeDbContextFactory<StudioContext>
{
    public StudioContext CreateDbContext(string[] args) => new(PostgreSqlStudio.OptionsOf("Host=localhost"));
}
