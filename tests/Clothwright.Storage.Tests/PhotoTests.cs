using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Bundles;

namespace Clothwright.Storage.Tests;

public class PhotoTests
{
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3, 4, 0xFF, 0xD9];

    [Fact]
    public async Task Photos_and_reservations_stay_when_their_yarn_is_changed_and_go_with_it()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        YarnEntry yarn = FreshStudio.Sheet("tide").Shelf[0];
        await fresh.Studio.Shelf.KeepAsync(yarn, null);
        YarnPhoto photo = (await fresh.Studio.Photos.AddAsync(yarn.Id, Jpeg, 40, 30))!;
        await fresh.Studio.Reservations.KeepAsync(Set(yarn.Id, 120), null);
        await fresh.Studio.Shelf.KeepAsync(yarn with { Name = "slack water" }, 1);
        await fresh.ReopenAsync();
        Assert.Equal(photo, Assert.Single(await fresh.Studio.Photos.ListAsync(yarn.Id)));
        Assert.Equal(Jpeg, await fresh.Studio.Photos.FindAsync(photo.Id));
        Assert.Equal(new Kept<YarnReservation>(1, Set(yarn.Id, 120)), Assert.Single(await fresh.Studio.Reservations.ListAsync()));

        await fresh.Studio.Shelf.RemoveAsync(yarn.Id, 2);
        Assert.Empty(await fresh.Studio.Photos.ListAsync());
        Assert.Empty(await fresh.Studio.Reservations.ListAsync());
    }

    [Fact]
    public async Task A_reservation_is_changed_only_on_the_version_that_stands()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        YarnEntry yarn = FreshStudio.Sheet("tide").Shelf[0];
        await fresh.Studio.Shelf.KeepAsync(yarn, null);
        Assert.Equal(new SaveOutcome.Saved(1, true), await fresh.Studio.Reservations.KeepAsync(Set(yarn.Id, 120), null));
        Assert.Equal(new SaveOutcome.Conflict(1), await fresh.Studio.Reservations.KeepAsync(Set(yarn.Id, 130), null));
        Assert.Equal(new SaveOutcome.Saved(2, false), await fresh.Studio.Reservations.KeepAsync(Set(yarn.Id, 130), 1));
        Assert.Equal(new SaveOutcome.Conflict(2), await fresh.Studio.Reservations.RemoveAsync(yarn.Id, "creek", 1));
        Assert.Equal(new SaveOutcome.NotThere(), await fresh.Studio.Reservations.KeepAsync(Set("heron", 130), null));
        await fresh.Studio.Reservations.RemoveAsync(yarn.Id, "creek", 2);
        Assert.Empty(await fresh.Studio.Reservations.ListAsync());
        await Assert.ThrowsAsync<InputProblemException>(() => fresh.Studio.Reservations.KeepAsync(Set(yarn.Id, 0), null));
    }

    [Fact]
    public async Task Photos_are_limited_and_need_their_yarn()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        Assert.Null(await fresh.Studio.Photos.AddAsync("heron", Jpeg, 40, 30));
        YarnEntry yarn = FreshStudio.Sheet("tide").Shelf[0];
        await fresh.Studio.Shelf.KeepAsync(yarn, null);
        for (int i = 0; i < YarnPhoto.MostOfOneYarn; i++) await fresh.Studio.Photos.AddAsync(yarn.Id, Jpeg, 40, 30);
        await Assert.ThrowsAsync<InputProblemException>(() => fresh.Studio.Photos.AddAsync(yarn.Id, Jpeg, 40, 30));
    }

    [Fact]
    public async Task A_bundle_carries_photos_reservations_and_masses_as_told()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        YarnEntry yarn = FreshStudio.Sheet("tide").Shelf[0];
        YarnEntry told = yarn with { Packages = [new YarnPackage(PackageForm.Cone, Mass.FromGrams(200), Mass.Zero) { Basis = MassBasis.Told }] };
        await fresh.Studio.Shelf.KeepAsync(told, null);
        YarnPhoto photo = (await fresh.Studio.Photos.AddAsync(yarn.Id, Jpeg, 40, 30))!;
        await fresh.Studio.Reservations.KeepAsync(Set(yarn.Id, 120), null);
        using var bundle = new MemoryStream();
        await fresh.Studio.Bundles.PackAsync(bundle);

        await using FreshStudio other = await FreshStudio.OpenAsync();
        BundleCounts counts = (await other.Studio.Bundles.UnpackAsync(bundle)).Value;
        Assert.Equal((1, 1, 1), (counts.Yarns, counts.Photos, counts.Reservations));
        Assert.Equal(Jpeg, await other.Studio.Photos.FindAsync(photo.Id));
        Assert.Equal(photo, Assert.Single(await other.Studio.Photos.ListAsync()));
        Assert.Equal(Set(yarn.Id, 120), Assert.Single(await other.Studio.Reservations.ListAsync()).Item);
        Assert.Equal(MassBasis.Told, (await other.Studio.Shelf.FindAsync(yarn.Id))!.Item.Packages[0].Basis);
    }

    [Fact]
    public async Task A_photo_on_a_demo_yarn_is_work_of_ones_own()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        YarnEntry yarn = FreshStudio.Sheet("tide").Shelf[0];
        await fresh.Studio.Shelf.KeepAsync(yarn, null, demo: true);
        Assert.True(await fresh.Studio.IsOnlyDemoAsync());
        await fresh.Studio.Photos.AddAsync(yarn.Id, Jpeg, 40, 30);
        Assert.False(await fresh.Studio.IsOnlyDemoAsync());
    }

    private static YarnReservation Set(string yarn, double grams) => new() { YarnId = yarn, WorksheetId = "creek", Grams = grams };
}
