using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Core.Wordings;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Charts;

/// <summary>The warp from front to back as a strip: each part as long as its share, lettered, with a pattern for its use.</summary>
internal static class WarpStrip
{
    private const float Band = 26;
    private const float Top = 12;
    private const float Narrowest = 7;

    /// <summary>The strip.</summary>
    /// <param name="parts">The parts from front to back.</param>
    /// <param name="width">Width in points.</param>
    /// <param name="language">Language of its words; English if left out.</param>
    public static Figure Draw(ImmutableArray<WarpPart> parts, float width, Wording? language = null)
    {
        Wording wording = language ?? Wording.English;
        float[] widths = Widths(parts, width);
        var small = new TextStyle(FontFace.Text, 7.5f, Palette.ThinInk);
        var marks = new List<Mark>
        {
            new LabelMark("front", wording.Tell("front"), 0, 8, LabelAlign.Start, small),
            new LabelMark("back", wording.Tell("back beam"), width, 8, LabelAlign.End, small),
        };
        float x = 0;
        for (int i = 0; i < parts.Length; i++)
        {
            var box = new Box(x, Top, widths[i], Band);
            marks.Add(new BoxesMark("part", [box], Ground(parts[i].Use), Palette.Ink, 0.6f));
            marks.AddRange(Pattern(parts[i].Use, box));
            TextStyle letter = new(FontFace.Strong, 7.5f, Palette.Ink);
            marks.Add(new LabelMark("letter", Letter(i), x + widths[i] / 2, Top + Band + 10, LabelAlign.Middle, letter));
            x += widths[i];
        }

        return new Figure(width, Top + Band + 13, wording.Tell("The warp from front to back"), [.. marks]);
    }

    /// <summary>The letter of a part: A to Z, then AA and on.</summary>
    /// <param name="index">0-based part.</param>
    public static string Letter(int index) => index < 26 ? $"{(char)('A' + index)}" : Letter(index / 26 - 1) + Letter(index % 26);

    /// <summary>What a part is used for, in words.</summary>
    /// <param name="use">The use.</param>
    public static string UseInWords(WarpPartUse use) => use switch
    {
        WarpPartUse.Piece => "woven, part of a piece",
        WarpPartUse.Sample => "woven, to try sett and beat",
        WarpPartUse.Fringe => "left unwoven",
        WarpPartUse.Header => "woven, to spread or to hold",
        _ => "cannot be woven",
    };

    // In proportion to length, but no part too narrow for its letter.
    private static float[] Widths(ImmutableArray<WarpPart> parts, float width)
    {
        double total = parts.Sum(p => p.Length.Metres);
        float least = Math.Min(Narrowest, width / Math.Max(1, parts.Length));
        float[] widths = [.. parts.Select(p => Math.Max(least, total > 0 ? (float)(p.Length.Metres / total) * width : least))];
        float rest = widths.Sum() - width;
        float spare = widths.Sum(w => w - least);
        return spare <= 0 ? widths : [.. widths.Select(w => w - rest * (w - least) / spare)];
    }

    private static SrgbColour Ground(WarpPartUse use) => use switch
    {
        WarpPartUse.Piece => Palette.Woad,
        WarpPartUse.Sample => new SrgbColour(0xdc, 0xc4, 0x7c),
        WarpPartUse.Header => new SrgbColour(0xb9, 0xc4, 0xa6),
        _ => Palette.Linen,
    };

    // Unwoven warp shows as threads, warp that cannot be woven as slanting lines, a sample as level lines.
    private static IEnumerable<Mark> Pattern(WarpPartUse use, Box box)
    {
        var lines = new List<ImmutableArray<(float X, float Y)>>();
        float right = box.X + box.Width;
        float bottom = box.Y + box.Height;
        switch (use)
        {
            case WarpPartUse.Fringe or WarpPartUse.Sample:
                float step = use == WarpPartUse.Fringe ? 2.6f : 5.2f;
                for (float y = box.Y + step; y < bottom - 0.5f; y += step) lines.Add([(box.X, y), (right, y)]);
                break;
            case WarpPartUse.LoomWaste:
                for (float x = box.X - box.Height + 5; x < right; x += 5)
                {
                    float from = Math.Max(x, box.X);
                    float to = Math.Min(x + box.Height, right);
                    if (to > from) lines.Add([(from, bottom - (from - x)), (to, bottom - (to - x))]);
                }

                break;
            default:
                break;
        }

        if (lines.Count > 0) yield return new LinesMark("pattern", [.. lines], Palette.ThinInk, 0.4f);
    }
}
