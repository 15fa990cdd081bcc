using System.Text;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Tests.Wif;

/// <summary>Files for the tests, and short ways to read them.</summary>
internal static class WifSample
{
    /// <summary>A 2/2 twill of four ends and four picks with everything a sound file needs.</summary>
    public const string Twill = """
        [WIF]
        Version=1.1
        Date=April 20, 1997
        Source Program=Saltings

        [CONTENTS]
        COLOR PALETTE=true
        WEAVING=true
        WARP=true
        WEFT=true
        TIEUP=true
        THREADING=true
        TREADLING=true
        COLOR TABLE=true

        [COLOR PALETTE]
        Entries=2
        Form=RGB
        Range=0,255

        [WEAVING]
        Shafts=4
        Treadles=4
        Rising Shed=true

        [WARP]
        Threads=4
        Color=1
        Units=Centimeters
        Spacing=0.125

        [WEFT]
        Threads=4
        Color=2
        Units=Centimeters
        Spacing=0.125

        [TIEUP]
        1=1,2
        2=2,3
        3=3,4
        4=1,4

        [THREADING]
        1=1
        2=2
        3=3
        4=4

        [TREADLING]
        1=1
        2=2
        3=3
        4=4

        [COLOR TABLE]
        1=59,122,120
        2=233,225,207

        """;

    public const string TwillDrawdown = "1100/0110/0011/1001";

    public static WifReading Read(string text, ReadingLimits? limits = null) => WifReader.Read(Encoding.UTF8.GetBytes(text), limits).Value;

    public static WovenDraft Draft(string text) => WifConversion.ToDraft(Read(text).Document).Value;

    public static string Drawdown(string text) => Draft(text).Draft.Drawdown().ToString();

    /// <summary>The twill with one section replaced, or taken out if nothing is put in its place.</summary>
    public static string With(string section, string? lines)
    {
        string text = Twill.ReplaceLineEndings("\n");
        int start = text.IndexOf($"[{section}]\n", StringComparison.Ordinal);
        if (start < 0) return text + $"[{section}]\n{lines}\n\n";
        int end = text.IndexOf("\n\n", start, StringComparison.Ordinal) + 2;
        return text[..start] + (lines is null ? "" : $"[{section}]\n{lines}\n\n") + text[end..];
    }

    /// <summary>The twill with one piece of text replaced.</summary>
    public static string Replaced(string old, string with)
    {
        Assert.Contains(old, Twill, StringComparison.Ordinal);
        return Twill.Replace(old, with, StringComparison.Ordinal);
    }

    public static void AssertWarns(WifReading reading, string section, string key, string words) => Assert.Contains(
        reading.Warnings, w => w.Section == section && w.Key == key && w.What.Contains(words, StringComparison.Ordinal));
}
