using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.Http;

namespace Clothwright.Storage.Bundles;

/// <summary>A packed studio that is open for reading, within <see cref="BundleLimits"/>.</summary>
internal sealed class BundleFile : IDisposable
{
    private const string Mend = "Use a file that this program packed, as it was packed.";

    private readonly ZipArchive _zip;
    private long _bytes;

    private BundleFile(ZipArchive zip) => _zip = zip;

    public static BundleFile Open(Stream stream)
    {
        try
        {
            var zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
            int files = zip.Entries.Count;
            if (files <= BundleLimits.MostFiles) return new BundleFile(zip);
            zip.Dispose();
            throw Problem("bundle", $"The bundle holds {files} files; {BundleLimits.MostFiles} are the most.");
        }
        catch (InvalidDataException)
        {
            throw Problem("bundle", "The file is no zip file, or not a whole one.");
        }
    }

    /// <summary>Whether there is such a file.</summary>
    public bool Has(string name) => _zip.GetEntry(name) is not null;

    /// <summary>The bytes of one file.</summary>
    /// <exception cref="InputProblemException">It is not there, damaged, or too large.</exception>
    public async Task<byte[]> BytesAsync(string name, int most, CancellationToken cancel)
    {
        ZipArchiveEntry entry = _zip.GetEntry(name) ?? throw Problem(name, $"The bundle holds no file \"{name}\".");
        try
        {
            await using Stream stream = await entry.OpenAsync(cancel);
            using var buffer = new MemoryStream();
            byte[] part = new byte[16 * 1024];
            for (int read; (read = await stream.ReadAsync(part, cancel)) > 0;)
            {
                if (buffer.Length + read > most || (_bytes += read) > BundleLimits.LargestBytes) throw Problem(name, $"The file unpacks to more than {most} bytes, or all files to more than {BundleLimits.LargestBytes}.");
                buffer.Write(part, 0, read);
            }

            return buffer.ToArray();
        }
        catch (InvalidDataException)
        {
            throw Problem(name, "The file is damaged.");
        }
    }

    /// <summary>A record, or a list of them.</summary>
    public async Task<T> RecordAsync<T>(string name, JsonTypeInfo<T> form, CancellationToken cancel)
        where T : notnull => Sound(name, RecordText.Read(await BytesAsync(name, BundleLimits.LargestFileBytes, cancel), form));

    /// <summary>What was read, or its problem with the name of the file in front.</summary>
    public static T Sound<T>(string name, Parsed<T> parsed)
        where T : notnull => parsed.Problem is { } problem ? throw new InputProblemException(problem with { Where = $"{name}, {problem.Where}" }) : parsed.Value;

    public static InputProblemException Problem(string where, string what, string mend = Mend) => new(new InputProblem(what, where, mend));

    public void Dispose() => _zip.Dispose();
}
