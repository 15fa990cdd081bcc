using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Charts;

/// <summary>The colours of the warp side by side, with end numbers below.</summary>
internal static class WindingStrip
{
    private const float Band = 16;
    private const float LeastBetweenNumbers = 34;

    /// <summary>The strip.</summary>
    /// <param name="turns">Neighbouring ends of one yarn, from end 1; at least one.</param>
    /// <param name="width">Width in points.</param>
    public static Figure Draw(ImmutableArray<WindingTurn> turns, float width)
    {
        int ends = turns[^1].LastEnd;
        var marks = new List<Mark>();
        foreach (WindingTurn turn in turns)
        {
            marks.Add(new BoxesMark("yarn", [new Box((turn.FirstEnd - 1) * width / ends, 0, turn.Ends * width / ends, Band)], turn.Colour));
        }

        marks.Add(new BoxesMark("strip", [new Box(0, 0, width, Band)], null, Palette.Ink, 0.5f));
        var number = new TextStyle(FontFace.Text, 8, Palette.ThinInk);
        var ticks = new List<ImmutableArray<(float X, float Y)>>();
        int step = Step(ends, width);
        for (int end = step; end < ends - step * 0.6; end += step) Add(end);
        Add(ends);
        marks.Add(new LinesMark("ticks", [.. ticks], Palette.ThinInk, 0.5f));
        return new Figure(width, Band + 13, "The colours of the warp", [.. marks]);

        void Add(int end)
        {
            float x = end * width / ends;
            ticks.Add([(x, Band), (x, Band + 3)]);
            marks.Add(new LabelMark("end", end.ToString(CultureInfo.InvariantCulture), x, Band + 12, end == ends ? LabelAlign.End : LabelAlign.Middle, number));
        }
    }

    // Tens, twenties, fifties and so on, far enough apart to be read.
    private static int Step(int ends, float width)
    {
        foreach (int step in (ReadOnlySpan<int>)[10, 20, 50, 100, 200, 500, 1000, 2000, 5000])
        {
            if (step * width / ends >= LeastBetweenNumbers) return step;
        }

        return ends;
    }
}
