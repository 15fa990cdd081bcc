using System.Text;

namespace Clothwright.Interchange.Drafts;

/// <summary>Finds out how a file's text is encoded: by its mark, else as UTF-8 if that is valid, else as code page 1252.</summary>
internal static class FileText
{
    // Code page 1252 for 0x80 to 0x9F (from memory of the Unicode Consortium's table CP1252.TXT); elsewhere it equals ISO 8859-1.
    // The five codes without a character stand for the control characters of the same number, as web browsers read them.
    private const string HighCodes =
        "\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F"
        + "\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178";

    /// <param name="bytes">The file.</param>
    /// <param name="warn">Told of anything that is not plain UTF-8, with its line from 1.</param>
    public static string Decode(ReadOnlySpan<byte> bytes, Action<int, string> warn)
    {
        string text = DecodeMarked(bytes, warn) ?? DecodePlain(bytes, warn);
        if (!text.Contains('\0', StringComparison.Ordinal)) return text;
        warn(1 + LineBreaksBefore(text, text.IndexOf('\0', StringComparison.Ordinal)), "There are NUL characters in the text; they are left out.");
        return text.Replace("\0", "", StringComparison.Ordinal);
    }

    private static string? DecodeMarked(ReadOnlySpan<byte> bytes, Action<int, string> warn)
    {
        if (bytes.StartsWith("\uFEFF"u8)) return Encoding.UTF8.GetString(bytes[3..]);
        bool little = bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]);
        bool big = bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]);
        if (little || big)
        {
            warn(1, "The text is UTF-16; it is read so, and written as UTF-8.");
            return (little ? Encoding.Unicode : Encoding.BigEndianUnicode).GetString(bytes[2..]);
        }

        return DecodeUnmarkedWide(bytes, warn);
    }

    // Plain text in UTF-16 without a mark shows as a letter and a NUL by turns.
    private static string? DecodeUnmarkedWide(ReadOnlySpan<byte> bytes, Action<int, string> warn)
    {
        if (bytes.Length < 8) return null;
        bool little = true;
        bool big = true;
        for (int i = 0; i < 8; i++)
        {
            bool isNul = bytes[i] == 0;
            little &= isNul == (i % 2 == 1);
            big &= isNul == (i % 2 == 0);
        }

        if (!little && !big) return null;
        warn(1, "The text is UTF-16 without a byte order mark; it is read so, and written as UTF-8.");
        return (little ? Encoding.Unicode : Encoding.BigEndianUnicode).GetString(bytes);
    }

    private static string DecodePlain(ReadOnlySpan<byte> bytes, Action<int, string> warn)
    {
        if (System.Text.Unicode.Utf8.IsValid(bytes)) return Encoding.UTF8.GetString(bytes);
        warn(1, "The text is not UTF-8; it is read as code page 1252 and written as UTF-8.");
        return string.Create(bytes.Length, bytes, static (characters, source) =>
        {
            for (int i = 0; i < source.Length; i++)
            {
                byte code = source[i];
                characters[i] = code is >= 0x80 and <= 0x9F ? HighCodes[code - 0x80] : (char)code;
            }
        });
    }

    private static int LineBreaksBefore(string text, int index)
    {
        int breaks = 0;
        for (int i = 0; i < index; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && text[i + 1] != '\n')) breaks++;
        }

        return breaks;
    }
}
