using System.IO.Compression;
using System.Text;

namespace Clothwright.Drawing.Tests.Pdf;

/// <summary>A PDF with its streams unpacked, to look for its syntax.</summary>
internal static class UnpackedPdf
{
    /// <summary>The whole file as Latin-1, each packed stream replaced by what it holds.</summary>
    public static string Of(byte[] pdf) => string.Concat(Parts(pdf).Select(p => p.Text));

    /// <summary>What pages draw: every stream that writes text or fills boxes.</summary>
    public static IReadOnlyList<string> PageContents(byte[] pdf) =>
        [.. Parts(pdf).Where(p => p.IsStream && p.Text.Contains(" Tm [", StringComparison.Ordinal)).Select(p => p.Text)];

    private static IEnumerable<(bool IsStream, string Text)> Parts(byte[] pdf)
    {
        string raw = Encoding.Latin1.GetString(pdf);
        int at = 0;
        while (true)
        {
            int begin = raw.IndexOf("\nstream\n", at, StringComparison.Ordinal);
            if (begin < 0) break;
            string before = raw[at..(begin + 8)];
            yield return (false, before);
            int end = raw.IndexOf("\nendstream", begin, StringComparison.Ordinal);
            int dictionary = before.LastIndexOf(" obj\n", StringComparison.Ordinal);
            byte[] stream = pdf[(begin + 8)..end];
            yield return (true, before[dictionary..].Contains("/FlateDecode", StringComparison.Ordinal) ? Unpacked(stream) : Encoding.Latin1.GetString(stream));
            at = end;
        }

        yield return (false, raw[at..]);
    }

    private static string Unpacked(byte[] stream)
    {
        using var packed = new MemoryStream(stream);
        using var zip = new ZLibStream(packed, CompressionMode.Decompress);
        using var unpacked = new MemoryStream();
        zip.CopyTo(unpacked);
        return Encoding.Latin1.GetString(unpacked.ToArray());
    }
}
