using System.IO.Compression;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.Http;

namespace Clothwright.Storage.Bundles;

/// <summary>Packs a whole studio into one zip file of open formats (JSON, CSV, WIF), and brings one in.</summary>
public sealed class StudioBundles
{
    /// <summary>Where a problem stands when the studio, not the bundle, is in the way.</summary>
    public const string StudioPlace = "studio";

    private readonly StudioWork _work;

    internal StudioBundles(StudioWork work) => _work = work;

    /// <summary>Packs everything: every save of every worksheet, shelf, bench, swatch records, weaving log.</summary>
    /// <param name="stream">Where to write; stays open. Need not be seekable.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task PackAsync(Stream stream, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return _work.WriteAsync(
            async studio =>
            {
                await using var zip = await ZipArchive.CreateAsync(stream, ZipArchiveMode.Create, leaveOpen: true, entryNameEncoding: null, cancel);
                await new BundlePacking(studio, zip, _work.Now(), cancel).PackAsync();
                return true;
            },
            cancel);
    }

    /// <summary>Brings a packed studio into this one, which holds nothing but the demo studio as it came.</summary>
    /// <param name="stream">The bundle; seekable.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    /// <returns>What came in, or the problem that kept all of it out.</returns>
    public async Task<Parsed<BundleCounts>> UnpackAsync(Stream stream, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(stream);
        try
        {
            using var bundle = BundleFile.Open(stream);
            return await _work.WriteAsync(studio => new BundleUnpacking(studio, bundle, cancel).UnpackAsync(), cancel);
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }
}
