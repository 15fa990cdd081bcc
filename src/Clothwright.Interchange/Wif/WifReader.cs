using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Wif;

/// <summary>Reads files of the open interchange standard WIF 1.1, forgivingly: what can be understood is, with a warning.</summary>
public static class WifReader
{
    /// <summary>Reads a file.</summary>
    /// <param name="bytes">The file. Text may be UTF-8 or UTF-16, or else code page 1252; lines may end in CR LF, LF or CR.</param>
    /// <param name="limits">How large a file may be; null for <see cref="ReadingLimits.Usual"/>.</param>
    /// <returns>The document and warnings, or the problem: it is no such file, or larger than the limits.</returns>
    public static Parsed<WifReading> Read(ReadOnlySpan<byte> bytes, ReadingLimits? limits = null)
    {
        limits ??= ReadingLimits.Usual;
        if (bytes.Length > limits.MaxBytes) return TooManyBytes(limits);
        try
        {
            var warnings = new WifWarnings(limits.MaxWarnings);
            string text = FileText.Decode(bytes, (line, what) => warnings.Add("", "", line, what));
            WifSections sections = WifSections.Split(text, limits, warnings);
            if (!sections.HoldsAny)
            {
                return new InputProblem(
                    bytes.IsEmpty ? "The file is empty." : "The file has no section of the WIF standard.",
                    "file",
                    "Give a WIF file: a text that begins with a line [WIF] and holds [THREADING] with [TIEUP] and [TREADLING], or [LIFTPLAN].");
            }

            WifDocument document = new WifAssembly(sections, limits, warnings).Assemble();
            return new WifReading(document, warnings.ToArray());
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }

    /// <summary>Reads a file from a stream, at most one byte past the limit.</summary>
    /// <param name="stream">The file, from where the stream stands.</param>
    /// <param name="limits">How large a file may be; null for <see cref="ReadingLimits.Usual"/>.</param>
    /// <inheritdoc cref="Read(ReadOnlySpan{byte}, ReadingLimits?)" path="/returns" />
    public static Parsed<WifReading> Read(Stream stream, ReadingLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        limits ??= ReadingLimits.Usual;
        using var held = new MemoryStream();
        byte[] piece = new byte[81920];
        int got;
        while ((got = stream.Read(piece)) > 0)
        {
            if (held.Length + got > limits.MaxBytes) return TooManyBytes(limits);
            held.Write(piece, 0, got);
        }

        return Read(held.GetBuffer().AsSpan(0, (int)held.Length), limits);
    }

    private static InputProblem TooManyBytes(ReadingLimits limits) => new(
        $"The file is larger than {limits.MaxBytes} bytes.",
        "file",
        "Give the draft alone: a WIF file of a few thousand ends and picks takes less than one million bytes.");
}
