using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Places to tick off: repeats threaded, lengths woven.</summary>
internal static class TickText
{
    private const int MostRepeats = 48;
    private const int MostLengths = 36;
    private const int FewestEnds = 12;
    private static readonly ImmutableArray<double> CentimetreSteps = [5, 10, 20, 25, 50, 100, 200, 500];
    private static readonly ImmutableArray<double> InchSteps = [2, 4, 6, 12, 18, 36, 72, 180];

    /// <summary>Repeats of the threading, with the number of the last end of each.</summary>
    public static ImmutableArray<TickRow> Threading(EndsPlan ends)
    {
        if (ends.Repeats < 2) return [];
        int together = 1;
        while (ends.Repeats / together > MostRepeats || (together * ends.RepeatEnds < FewestEnds && together < ends.Repeats)) together++;
        int before = ends.FloatingSelvedges / 2 + ends.SelvedgeEnds / 2;
        var marks = ImmutableArray.CreateBuilder<string>();
        for (int done = together; done < ends.Repeats; done += together) marks.Add(Words.Count(before + done * ends.RepeatEnds));
        marks.Add(Words.Count(before + ends.Repeats * ends.RepeatEnds));
        string what = together == 1 ? "each repeat" : $"every {Words.Of(together, "repeat")}, {Words.Of(together * ends.RepeatEnds, "end")},";
        return [new TickRow($"Tick {what} when threaded and checked; the number is that of its last end.", marks.ToImmutable())];
    }

    /// <summary>Lengths woven under tension, with the picks to there, one row for each piece alike.</summary>
    public static ImmutableArray<TickRow> Weaving(PiecePlan piece, UnitStyle units)
    {
        bool metric = units == UnitStyle.Metric;
        double whole = metric ? piece.LengthUnderTension.Value.Centimetres : piece.LengthUnderTension.Value.Inches;
        ImmutableArray<double> steps = metric ? CentimetreSteps : InchSteps;
        double step = steps.FirstOrDefault(s => whole / s <= MostLengths / Math.Max(1, Math.Min(piece.Piece.Count, 3)), steps[^1]);
        var marks = ImmutableArray.CreateBuilder<string>();
        for (double at = step; at < whole - step / 4; at += step) marks.Add(Mark(at, at / whole));
        marks.Add(Mark(whole, 1));
        string unit = metric ? "cm" : "in";
        string caption = $"Tick the length woven under tension, in {unit}, and the picks to there";
        int copies = Math.Min(piece.Piece.Count, 12);
        return
        [
            .. Enumerable.Range(1, copies).Select(copy => new TickRow(
                copies == 1 ? $"{caption}." : copy == 1 ? $"{caption}. {Copy(copy)}:" : $"{Copy(copy)}:", marks.ToImmutable())),
        ];

        string Copy(int copy) => Words.Sentence($"{PieceWords.One(piece.Piece.Kind)} {Words.Count(copy)}");

        string Mark(double at, double share) =>
            string.Create(CultureInfo.InvariantCulture, $"{at:0.#} · {Math.Round(share * piece.Picks.Value.Count):0}");
    }
}
