using Clothwright.Core.Quantities;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Shelf;

/// <summary>Photos of yarns. A photo is added and removed, never changed.</summary>
public sealed class YarnPhotos
{
    private readonly StudioWork _work;

    internal YarnPhotos(StudioWork work) => _work = work;

    /// <summary>What is known of all photos, or of those of one yarn, the oldest first.</summary>
    /// <param name="yarnId">The yarn; null for all.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<YarnPhoto[]> ListAsync(string? yarnId = null, CancellationToken cancel = default) => _work.ReadAsync(
        studio => studio.YarnPhotos
            .Where(p => yarnId == null || p.YarnId == yarnId)
            .OrderBy(p => p.AddedAt).ThenBy(p => p.Id)
            .Select(p => new YarnPhoto(p.Id, p.YarnId, p.AddedAt, p.WidthPixels, p.HeightPixels))
            .ToArrayAsync(cancel),
        cancel);

    /// <summary>The picture, as a JPEG; null if there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<byte[]?> FindAsync(string id, CancellationToken cancel = default) => _work.ReadAsync(
        async studio => (await studio.YarnPhotos.SingleOrDefaultAsync(p => p.Id == id, cancel))?.Jpeg, cancel);

    /// <summary>Adds a photo to a yarn.</summary>
    /// <param name="yarnId">The yarn.</param>
    /// <param name="jpeg">The picture.</param>
    /// <param name="widthPixels">Its width.</param>
    /// <param name="heightPixels">Its height.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    /// <returns>The photo; null if there is no such yarn.</returns>
    /// <exception cref="InputProblemException">The yarn has as many photos as it may.</exception>
    public Task<YarnPhoto?> AddAsync(string yarnId, byte[] jpeg, int widthPixels, int heightPixels, CancellationToken cancel = default) => _work.WriteAsync(
        async studio =>
        {
            if (!await studio.Yarns.AnyAsync(y => y.Id == yarnId, cancel)) return null;
            if (await studio.YarnPhotos.CountAsync(p => p.YarnId == yarnId, cancel) >= YarnPhoto.MostOfOneYarn)
            {
                throw new InputProblemException(new InputProblem($"The yarn has {YarnPhoto.MostOfOneYarn} photos already.", "photo", "Remove one that is not needed first."));
            }

            var photo = new YarnPhoto(Guid.NewGuid().ToString("N"), yarnId, _work.Now(), widthPixels, heightPixels);
            studio.Add(Row(photo, jpeg));
            return photo;
        },
        cancel);

    /// <summary>Removes a photo.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    /// <returns>Whether there was one.</returns>
    public Task<bool> RemoveAsync(string id, CancellationToken cancel = default) => _work.WriteAsync(
        async studio => await studio.YarnPhotos.Where(p => p.Id == id).ExecuteDeleteAsync(cancel) > 0, cancel);

    internal static YarnPhotoRow Row(YarnPhoto photo, byte[] jpeg) => new()
    {
        Id = photo.Id,
        YarnId = photo.YarnId,
        AddedAt = photo.AddedAt,
        WidthPixels = photo.WidthPixels,
        HeightPixels = photo.HeightPixels,
        Jpeg = jpeg,
    };
}
