using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Clothwright.Interchange.Wif;

/// <summary>The sections of the standard, in the order they are written.</summary>
internal static class WifSectionNames
{
    public const string Wif = "WIF";
    public const string Contents = "CONTENTS";
    public const string ColorPalette = "COLOR PALETTE";
    public const string Text = "TEXT";
    public const string Weaving = "WEAVING";
    public const string Warp = "WARP";
    public const string Weft = "WEFT";
    public const string Notes = "NOTES";
    public const string TieUp = "TIEUP";
    public const string Threading = "THREADING";
    public const string Treadling = "TREADLING";
    public const string LiftPlan = "LIFTPLAN";
    public const string ColorTable = "COLOR TABLE";

    public static ImmutableArray<string> InOrder { get; } =
    [
        Wif, Contents, ColorPalette, "WARP SYMBOL PALETTE", "WEFT SYMBOL PALETTE", Text, Weaving, Warp, Weft, Notes,
        TieUp, Threading, Treadling, LiftPlan, ColorTable,
        "WARP COLORS", "WEFT COLORS",
        "WARP SPACING", "WEFT SPACING", "WARP SPACING ZOOM", "WEFT SPACING ZOOM",
        "WARP THICKNESS", "WEFT THICKNESS", "WARP THICKNESS ZOOM", "WEFT THICKNESS ZOOM",
        "WARP SYMBOLS", "WEFT SYMBOLS", "WARP SYMBOL TABLE", "WEFT SYMBOL TABLE",
        "BITMAP IMAGE", "BITMAP FILE",
    ];

    private static readonly FrozenSet<string> Known = InOrder.ToFrozenSet(StringComparer.Ordinal);

    public static bool IsStandard(string name) => Known.Contains(name);

    public static bool IsPrivate(string name) => name == "PRIVATE" || name.StartsWith("PRIVATE ", StringComparison.Ordinal);

    /// <summary>Whether a section is kept word for word: pictures, private ones, and those the standard does not know.</summary>
    public static bool IsKept(string name) => !IsStandard(name) || name.StartsWith("BITMAP", StringComparison.Ordinal);

    /// <summary>Whether a line, blanks round it left out, opens a section: a name in brackets, and anything behind them.</summary>
    public static bool TryHeading(ReadOnlySpan<char> trimmed, out ReadOnlySpan<char> name)
    {
        name = default;
        if (trimmed.IsEmpty || trimmed[0] != '[') return false;
        int close = trimmed.IndexOf(']');
        if (close > 0) name = trimmed[1..close].Trim();
        return !name.IsEmpty;
    }

    /// <summary>Capitals, one blank between words: names are not case-sensitive.</summary>
    public static string Canonical(ReadOnlySpan<char> written)
    {
        Span<char> buffer = written.Length <= 256 ? stackalloc char[written.Length] : new char[written.Length];
        int length = 0;
        foreach (char character in written.Trim())
        {
            bool blank = char.IsWhiteSpace(character);
            if (blank && length > 0 && buffer[length - 1] == ' ') continue;
            buffer[length++] = blank ? ' ' : char.ToUpperInvariant(character);
        }

        return buffer[..length].ToString();
    }
}
