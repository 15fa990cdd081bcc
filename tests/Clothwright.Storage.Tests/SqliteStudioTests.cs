using Clothwright.Storage.Rows;
using Clothwright.Storage.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Tests;

public class SqliteStudioTests
{
    [Fact]
    public void The_migrations_make_the_tables_that_the_model_has()
    {
        using StudioContext studio = new(SqliteStudio.OptionsOf("Data Source=:memory:"));
        Assert.False(studio.Database.HasPendingModelChanges());
        Assert.NotEmpty(studio.Database.GetMigrations());
    }

    [Fact]
    public async Task A_committed_save_is_handed_to_the_disk()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await using StudioContext studio = new(SqliteStudio.OptionsOf($"Data Source={Path.Combine(fresh.Folder, SqliteStudio.FileName)};Pooling=False"));
        await studio.Database.OpenConnectionAsync();
        Assert.Equal("wal", await PragmaAsync(studio, "journal_mode"));
        // 2 is FULL: https://www.sqlite.org/pragma.html#pragma_synchronous
        Assert.Equal("2", await PragmaAsync(studio, "synchronous"));
        Assert.Equal("1", await PragmaAsync(studio, "foreign_keys"));
    }

    [Fact]
    public async Task A_save_without_its_worksheet_cannot_be_kept()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await using StudioContext studio = new(SqliteStudio.OptionsOf($"Data Source={Path.Combine(fresh.Folder, SqliteStudio.FileName)};Pooling=False"));
        studio.Add(new WorksheetSaveRow { WorksheetId = "nowhere", Version = 1, Title = "x", Document = "{}" });
        var refusal = await Assert.ThrowsAsync<DbUpdateException>(() => studio.SaveChangesAsync());
        Assert.Equal(19, Assert.IsType<SqliteException>(refusal.InnerException).SqliteErrorCode);
    }

    [Fact]
    public async Task A_new_studio_is_bare()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        Assert.True(await fresh.Studio.IsBareAsync());
        Assert.True(await fresh.Studio.IsOnlyDemoAsync());
        await fresh.SaveAsync("creek", "first", basedOn: null);
        Assert.False(await fresh.Studio.IsBareAsync());
    }

    private static async Task<string> PragmaAsync(StudioContext studio, string name)
    {
        await using var command = studio.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {name};";
        return (await command.ExecuteScalarAsync())!.ToString()!;
    }
}
