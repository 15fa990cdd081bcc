using Clothwright.Core.Quantities;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Worksheets;

namespace Clothwright.Storage.Tests;

public class WorksheetArchiveTests
{
    [Fact]
    public async Task A_worksheet_comes_back_as_it_was_saved_and_after_a_restart_too()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        Assert.Equal(1, await fresh.SaveAsync("creek", "Creek scarf", basedOn: null));
        KeptWorksheet before = (await fresh.Studio.Worksheets.FindAsync("creek"))!;
        await fresh.ReopenAsync();
        KeptWorksheet after = (await fresh.Studio.Worksheets.FindAsync("creek"))!;
        Assert.Equal(before, after);
        Assert.Contains("\"title\": \"Creek scarf\"", after.Document, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_save_based_on_an_earlier_version_is_a_conflict_and_changes_nothing()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.SaveAsync("creek", "first", basedOn: null);
        await fresh.SaveAsync("creek", "second", basedOn: 1);
        var conflict = Assert.IsType<WorksheetOutcome.Conflict>(await fresh.Studio.Worksheets.SaveAsync("creek", FreshStudio.Sheet("late"), basedOn: 1));
        Assert.Equal(2, conflict.Current.Version);
        Assert.Contains("\"title\": \"second\"", conflict.Current.Document, StringComparison.Ordinal);
        Assert.Equal(2, (await fresh.Studio.Worksheets.HistoryAsync("creek")).Length);
    }

    [Fact]
    public async Task A_new_worksheet_under_an_id_that_is_taken_is_a_conflict()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.SaveAsync("creek", "first", basedOn: null);
        Assert.IsType<WorksheetOutcome.Conflict>(await fresh.Studio.Worksheets.SaveAsync("creek", FreshStudio.Sheet("another"), basedOn: null));
    }

    [Fact]
    public async Task A_save_that_was_sent_twice_is_kept_once()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.SaveAsync("creek", "first", basedOn: null);
        await fresh.SaveAsync("creek", "second", basedOn: 1);
        Assert.Equal(2, await fresh.SaveAsync("creek", "second", basedOn: 1));
        Assert.Equal(2, (await fresh.Studio.Worksheets.HistoryAsync("creek")).Length);
    }

    [Fact]
    public async Task A_version_of_a_worksheet_that_was_never_saved_is_not_there()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        Assert.IsType<WorksheetOutcome.NotThere>(await fresh.Studio.Worksheets.SaveAsync("creek", FreshStudio.Sheet("first"), basedOn: 1));
        Assert.Null(await fresh.Studio.Worksheets.FindAsync("creek"));
    }

    [Fact]
    public async Task Of_many_saves_at_once_based_on_the_same_version_one_is_kept()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.SaveAsync("creek", "first", basedOn: null);
        WorksheetOutcome[] outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(() => fresh.Studio.Worksheets.SaveAsync("creek", FreshStudio.Sheet($"hand {i}"), basedOn: 1))));
        Assert.Single(outcomes.OfType<WorksheetOutcome.Saved>());
        Assert.Equal(7, outcomes.OfType<WorksheetOutcome.Conflict>().Count());
        Assert.Equal(2, (await fresh.Studio.Worksheets.HistoryAsync("creek")).Length);
    }

    [Fact]
    public async Task A_restored_save_is_the_next_version_and_those_between_stay()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.SaveAsync("creek", "first", basedOn: null);
        await fresh.SaveAsync("creek", "second", basedOn: 1);
        KeptWorksheet first = (await fresh.Studio.Worksheets.FindAsync("creek", 1))!;
        Assert.IsType<WorksheetOutcome.Saved>(await fresh.Studio.Worksheets.RestoreAsync("creek", version: 1, basedOn: 2));
        Assert.Equal(first.Document, (await fresh.Studio.Worksheets.FindAsync("creek"))!.Document);
        WorksheetVersion[] history = await fresh.Studio.Worksheets.HistoryAsync("creek");
        Assert.Equal([(3, "first", 1), (2, "second", null), (1, "first", (int?)null)], history.Select(s => (s.Version, s.Title, s.RestoredFrom)));
        Assert.True(history[0].SavedAt > history[1].SavedAt && history[1].SavedAt > history[2].SavedAt);
    }

    [Fact]
    public async Task A_restore_that_has_not_seen_the_last_save_is_a_conflict()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.SaveAsync("creek", "first", basedOn: null);
        await fresh.SaveAsync("creek", "second", basedOn: 1);
        Assert.IsType<WorksheetOutcome.Conflict>(await fresh.Studio.Worksheets.RestoreAsync("creek", version: 1, basedOn: 1));
        Assert.IsType<WorksheetOutcome.NotThere>(await fresh.Studio.Worksheets.RestoreAsync("creek", version: 9, basedOn: 2));
    }

    [Fact]
    public async Task A_worksheet_put_away_keeps_its_history_and_comes_back()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.SaveAsync("creek", "first", basedOn: null);
        Assert.True(await fresh.Studio.Worksheets.PutAwayAsync("creek", away: true));
        Assert.Empty(await fresh.Studio.Worksheets.ListAsync());
        Assert.Equal("creek", Assert.Single(await fresh.Studio.Worksheets.ListAsync(putAway: true)).Id);
        Assert.Single(await fresh.Studio.Worksheets.HistoryAsync("creek"));
        Assert.True(await fresh.Studio.Worksheets.PutAwayAsync("creek", away: false));
        Assert.Single(await fresh.Studio.Worksheets.ListAsync());
        Assert.False(await fresh.Studio.Worksheets.PutAwayAsync("nowhere", away: true));
    }

    [Fact]
    public async Task Worksheets_are_listed_the_last_saved_first()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.SaveAsync("a", "a", basedOn: null);
        await fresh.SaveAsync("b", "b", basedOn: null);
        await fresh.SaveAsync("a", "a again", basedOn: 1);
        Assert.Equal(["a", "b"], (await fresh.Studio.Worksheets.ListAsync()).Select(w => w.Id));
    }

    [Theory]
    [InlineData("")]
    [InlineData("../creek")]
    [InlineData("a/b")]
    [InlineData(".hidden")]
    [InlineData("a b")]
    public async Task An_id_that_could_leave_its_place_is_refused(string id)
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        var refusal = await Assert.ThrowsAsync<InputProblemException>(() => fresh.Studio.Worksheets.SaveAsync(id, FreshStudio.Sheet("first"), basedOn: null));
        Assert.Contains($"\"{id}\" cannot be an id", refusal.Problem.What, StringComparison.Ordinal);
    }
}
