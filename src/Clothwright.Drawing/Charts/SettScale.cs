using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Wordings;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Charts;

/// <summary>The sett on a scale of ends per width: one row for what serves the purpose, one for each reed or heddle, one for each limit.</summary>
internal static class SettScale
{
    private const double CentimetresPerInch = 2.54;
    private const float Row = 14.5f;
    private const float Top = 14;
    private const float NameShare = 0.34f;
    private const float ValueShare = 0.27f;
    private const float CentimetreEdge = 0.86f;
    private static readonly TextStyle Name = new(FontFace.Text, 8.4f, Palette.Ink);
    private static readonly TextStyle Heading = new(FontFace.Italic, 8.4f, Palette.ThinInk);
    private static readonly TextStyle Strong = new(FontFace.Strong, 8.4f, Palette.Ink);
    private static readonly TextStyle Number = new(FontFace.Text, 8, Palette.ThinInk);

    /// <summary>The chart.</summary>
    /// <param name="scale">What stands on the scale.</param>
    /// <param name="width">Width in points.</param>
    /// <param name="language">Language of its words; English if left out.</param>
    public static Figure Draw(SettScaleBlock scale, float width, Wording? language = null)
    {
        Wording wording = language ?? Wording.English;
        float left = width * NameShare;
        float right = width * (1 - ValueShare);
        (double low, double high) = Edges(scale);
        int rows = 1 + Rows(scale.Stops) + Rows(scale.Limits);
        float bottom = Top + rows * Row;
        var marks = new List<Mark>();
        AddAxis(marks, left, right, bottom, low, high, width, wording);
        float chosen = X(scale.Chosen);
        marks.Add(new LinesMark("chosen", [[(chosen, Top - 2), (chosen, bottom)]], Palette.Madder, 0.8f, Dashed: true));
        float y = Top;
        marks.Add(new BoxesMark("serves", [new Box(X(scale.Low), y + 3, X(scale.High) - X(scale.Low), Row - 6)], Palette.Moss));
        marks.Add(new BoxesMark("advised", [new Box(X(scale.Advised) - 0.75f, y + 1, 1.5f, Row - 2)], Palette.Ink));
        AddWords(marks, wording.Tell($"Serves {scale.Purpose}; advised"), wording.Tell(Range(scale, UnitStyle.Metric)), wording.Tell(Range(scale, UnitStyle.Customary)), Name, y, width);
        if (!scale.Stops.IsEmpty) AddHeading(marks, wording.Tell("What reeds and heddles at hand give"), y += Row, width);
        foreach (SettStop stop in scale.Stops)
        {
            y += Row;
            Box mark = new(X(stop.Sett) - 3, y + Row / 2 - 3, 6, 6);
            marks.Add(stop.MarksLikely ? new BoxesMark("reed-with-marks", [mark], Palette.Paper, Palette.Madder, 1) : new BoxesMark("reed", [mark], Palette.Madder));
            string words = stop.MarksLikely ? $"{stop.Name}; {wording.Tell("may mark")}" : stop.Name;
            AddWords(marks, stop.IsChosen ? $"{words} ({wording.Tell("woven")})" : words, Metric(stop.Sett), Customary(stop.Sett), stop.IsChosen ? Strong : Name, y, width);
        }

        if (!scale.Limits.IsEmpty) AddHeading(marks, wording.Tell("At most, by method"), y += Row, width);
        foreach (SettStop limit in scale.Limits)
        {
            y += Row;
            marks.Add(new BoxesMark("limit", [new Box(X(limit.Sett) - 1, y + 2, 2, Row - 4)], Palette.Woad));
            marks.Add(new LinesMark("to-limit", [[(left, y + Row / 2), (X(limit.Sett), y + Row / 2)]], Palette.Woad, 0.5f));
            AddWords(marks, limit.Name, Metric(limit.Sett), Customary(limit.Sett), Name, y, width);
        }

        return new Figure(width, bottom + 15, wording.Tell("The sett on its scale"), [.. marks]);

        float X(Sett sett) => left + (float)((sett.PerCentimetre - low) / (high - low)) * (right - left);
    }

    /// <summary>The chart in words, for readers who cannot see it.</summary>
    /// <param name="scale">What stands on the scale.</param>
    public static string InWords(SettScaleBlock scale) => string.Join(" ",
    [
        $"Serves {scale.Purpose}: {Range(scale, UnitStyle.Metric)} per cm; advised {Both(scale.Advised)}; woven {Both(scale.Chosen)}.",
        .. scale.Stops.Select(s => $"{s.Name}: {Both(s.Sett)}{(s.MarksLikely ? ", marks likely" : "")}{(s.IsChosen ? ", woven" : "")}."),
        .. scale.Limits.Select(l => $"Closest by {l.Name}: {Both(l.Sett)}."),
    ]);

    private static int Rows(ImmutableArray<SettStop> stops) => stops.IsEmpty ? 0 : 1 + stops.Length;

    private static void AddHeading(List<Mark> marks, string words, float y, float width)
    {
        marks.Add(new LabelMark("heading", words, 0, y + Row / 2 + Heading.Size * 0.36f, LabelAlign.Start, Heading));
        marks.Add(new LinesMark("row", [[(0, y + Row), (width, y + Row)]], Palette.LinenLine, 0.4f));
    }

    private static void AddWords(List<Mark> marks, string name, string metric, string customary, TextStyle style, float y, float width)
    {
        float baseline = y + Row / 2 + style.Size * 0.36f;
        marks.Add(new LabelMark("name", TextWrap.Fitted(name, style, width * NameShare - 8).Text, 0, baseline, LabelAlign.Start, style));
        marks.Add(new LabelMark("per-cm-value", metric, width * CentimetreEdge, baseline, LabelAlign.End, style));
        marks.Add(new LabelMark("per-inch-value", customary, width, baseline, LabelAlign.End, style));
        marks.Add(new LinesMark("row", [[(0, y + Row), (width, y + Row)]], Palette.LinenLine, 0.4f));
    }

    // Ends per cm above with lines through the chart, ends per inch below at places of their own.
    private static void AddAxis(List<Mark> marks, float left, float right, float bottom, double low, double high, float width, Wording wording)
    {
        var lines = new List<ImmutableArray<(float X, float Y)>>();
        foreach (double at in Steps(low, high))
        {
            float x = left + (float)((at - low) / (high - low)) * (right - left);
            lines.Add([(x, Top), (x, bottom)]);
            marks.Add(new LabelMark("per-cm", at.ToString("0.#", CultureInfo.InvariantCulture), x, Top - 4, LabelAlign.Middle, Number));
        }

        foreach (double at in Steps(low * CentimetresPerInch, high * CentimetresPerInch))
        {
            float x = left + (float)((at / CentimetresPerInch - low) / (high - low)) * (right - left);
            lines.Add([(x, bottom), (x, bottom + 3)]);
            marks.Add(new LabelMark("per-inch", at.ToString("0.#", CultureInfo.InvariantCulture), x, bottom + 12, LabelAlign.Middle, Number));
        }

        marks.Add(new LinesMark("grid", [.. lines], Palette.LinenLine, 0.4f));
        marks.Add(new LabelMark("unit", wording.Tell("ends per cm"), 0, Top - 4, LabelAlign.Start, Number));
        marks.Add(new LabelMark("unit", wording.Tell("ends per inch"), 0, bottom + 12, LabelAlign.Start, Number));
        marks.Add(new LabelMark("unit", wording.Tell("per cm"), width * CentimetreEdge, Top - 4, LabelAlign.End, Number));
        marks.Add(new LabelMark("unit", wording.Tell("per inch"), width, Top - 4, LabelAlign.End, Number));
    }

    private static IEnumerable<double> Steps(double low, double high)
    {
        double step = new[] { 0.5, 1, 2, 5, 10, 20, 50, 100 }.FirstOrDefault(s => (high - low) / s <= 7, 200);
        for (double at = Math.Ceiling(low / step) * step; at <= high + 1e-9; at += step) yield return at;
    }

    // A little beyond what stands on the scale, so that every mark is whole.
    private static (double Low, double High) Edges(SettScaleBlock scale)
    {
        double[] all =
        [
            scale.Low.PerCentimetre, scale.High.PerCentimetre, scale.Advised.PerCentimetre, scale.Chosen.PerCentimetre,
            .. scale.Stops.Select(s => s.Sett.PerCentimetre), .. scale.Limits.Select(l => l.Sett.PerCentimetre),
        ];
        double margin = Math.Max((all.Max() - all.Min()) * 0.06, all.Max() * 0.02);
        return (Math.Max(0, all.Min() - margin), all.Max() + margin);
    }

    private static string Both(Sett sett) =>
        $"{QuantityText.Format(QuantityKind.Sett, sett.PerMetre, UnitStyle.Metric)}, {QuantityText.Format(QuantityKind.Sett, sett.PerMetre, UnitStyle.Customary)}";

    private static string Metric(Sett sett) => sett.PerCentimetre.ToString("0.0#", CultureInfo.InvariantCulture);

    private static string Customary(Sett sett) => sett.PerInch.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Range(SettScaleBlock scale, UnitStyle style)
    {
        (double low, double high) = style == UnitStyle.Metric ? (scale.Low.PerCentimetre, scale.High.PerCentimetre) : (scale.Low.PerInch, scale.High.PerInch);
        return string.Create(CultureInfo.InvariantCulture, $"{low:0.0} to {high:0.0}");
    }
}
