using Clothwright.Core.Quantities;
using Clothwright.Server;
using Clothwright.Storage.PostgreSql;
using Clothwright.Storage.Rows;
using Clothwright.Storage.Worksheets;
using Microsoft.AspNetCore.Builder;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Clothwright.Storage.Tests;

public class PostgreSqlStudioTests
{
    [Fact]
    public void The_migrations_make_the_tables_that_the_model_has()
    {
        using StudioContext studio = new(PostgreSqlStudio.OptionsOf("Host=localhost"));
        Assert.False(studio.Database.HasPendingModelChanges());
        Assert.NotEmpty(studio.Database.GetMigrations());
    }

    [Fact]
    public async Task A_save_without_its_worksheet_cannot_be_kept()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await using StudioContext studio = fresh.Tables();
        studio.Add(new WorksheetSaveRow { WorksheetId = "nowhere", Version = 1, Title = "x", Document = "{}" });
        var refusal = await Assert.ThrowsAsync<DbUpdateException>(() => studio.SaveChangesAsync());
        // A reference that leads nowhere: https://www.postgresql.org/docs/current/errcodes-appendix.html
        Assert.Equal("23503", Assert.IsType<PostgresException>(refusal.InnerException).SqlState);
    }

    [Fact]
    public async Task Two_servers_on_one_database_lose_no_save_of_each_other()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        Studio second = await PostgreSqlStudio.OpenAsync(fresh.Connection, TimeProvider.System);
        await fresh.SaveAsync("creek", "first", basedOn: null);
        Studio[] both = [fresh.Studio, second];
        WorksheetOutcome[] outcomes = await Task.WhenAll(Enumerable.Range(0, 12).Select(i => Task.Run(() => both[i % 2].Worksheets.SaveAsync("creek", FreshStudio.Sheet($"hand {i}"), basedOn: 1))));
        Assert.Single(outcomes.OfType<WorksheetOutcome.Saved>());
        Assert.Equal(11, outcomes.OfType<WorksheetOutcome.Conflict>().Count());
        Assert.Equal(2, (await second.Worksheets.HistoryAsync("creek")).Length);
    }

    [Fact]
    public async Task What_is_packed_from_a_file_comes_into_a_database_and_back()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        string folder = Directory.CreateTempSubdirectory("clothwright-studio-").FullName;
        try
        {
            Studio file = await Sqlite.SqliteStudio.OpenAsync(folder, TimeProvider.System);
            await file.Worksheets.SaveAsync("creek", FreshStudio.Sheet("first"), basedOn: null);
            await file.Worksheets.SaveAsync("creek", FreshStudio.Sheet("second"), basedOn: 1);
            using var bundle = new MemoryStream();
            await file.Bundles.PackAsync(bundle);
            bundle.Position = 0;
            Assert.Equal(2, (await fresh.Studio.Bundles.UnpackAsync(bundle)).Value.Saves);
            Assert.Equal(await file.Worksheets.HistoryAsync("creek"), await fresh.Studio.Worksheets.HistoryAsync("creek"));
            Assert.Equal(await file.Worksheets.FindAsync("creek"), await fresh.Studio.Worksheets.FindAsync("creek"));
        }
        finally
        {
            Sqlite.SqliteStudio.Close(folder);
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task The_server_keeps_its_studio_in_the_database_it_is_told()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        string folder = Directory.CreateTempSubdirectory("clothwright-server-").FullName;
        try
        {
            await using (WebApplication server = await ServerHost.BuildAsync(new ServerOptions { Port = 0, DataFolder = folder, Database = fresh.Connection }))
            {
                await server.StartAsync();
                using var http = new HttpClient { BaseAddress = ServerHost.AddressOf(server) };
                Assert.Contains("reedbed-scarves", await http.GetStringAsync("api/worksheets"), StringComparison.Ordinal);
                Assert.NotEmpty(await http.GetByteArrayAsync("api/bundle.zip"));
            }

            Assert.NotEmpty(await fresh.Studio.Worksheets.ListAsync());
            Assert.Empty(Directory.GetFiles(folder));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task A_database_that_does_not_answer_is_named_without_its_password()
    {
        string words = PostgreSqlStudio.Read("Host=127.0.0.1;Port=1;Database=weaving;Username=school;Password=neap").Value;
        Assert.Equal("the database weaving on 127.0.0.1", PostgreSqlStudio.InWords(words));
        await Assert.ThrowsAsync<NpgsqlException>(() => PostgreSqlStudio.OpenAsync(words, TimeProvider.System));
        InputProblem problem = PostgreSqlStudio.Read("Tide=high").Problem!;
        Assert.Equal("database", problem.Where);
    }
}
