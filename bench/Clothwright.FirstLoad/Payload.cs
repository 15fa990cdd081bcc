using Microsoft.Playwright;

namespace Clothwright.FirstLoad;

/// <summary>What an opening of the page loads.</summary>
/// <param name="Files">How many files of the page.</param>
/// <param name="Brotli">Their bytes as brotli, where they are published so; else as they are.</param>
/// <param name="Transferred">Bytes that went over the wire, whatever packing browser and server agreed on.</param>
internal sealed record Payload(int Files, long Brotli, long Transferred)
{
    public static async Task<Payload> OfAsync(IPage page, string folder)
    {
        string[] loaded = await page.EvaluateAsync<string[]>("performance.getEntriesByType('resource').map(r => `${new URL(r.name).pathname} ${r.transferSize}`)");
        int files = 0;
        long brotli = 0;
        long transferred = 0;
        foreach (string entry in loaded)
        {
            string[] parts = entry.Split(' ');
            string file = Path.Combine(folder, "wwwroot", parts[0].TrimStart('/'));
            if (!File.Exists(file)) continue;
            files++;
            brotli += new FileInfo(File.Exists(file + ".br") ? file + ".br" : file).Length;
            transferred += long.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture);
        }

        return new Payload(files, brotli, transferred);
    }
}
