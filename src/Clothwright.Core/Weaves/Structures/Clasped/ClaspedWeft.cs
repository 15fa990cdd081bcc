using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Clasped weft: two yarns meet in each shed, clasp and turn back, so that each pick is double and changes colour where they meet.</summary>
public sealed class ClaspedWeft
{
    /// <summary>The most picks of a plan.</summary>
    public const int MostPicks = DraftLimits.Picks;

    private ClaspedWeft(Length width, ImmutableArray<Length> joins)
    {
        Width = width;
        Joins = joins;
        Derived<Length> across = Derived.Decision("width in the reed", width);
        Derived<Length> mean = Derived.Given("mean place of the joins", Length.FromMetres(joins.Average(j => j.Metres)), Source.Decision, formula: "mean of the joins from the left edge");
        Derived<Whole> picks = Derived.Decision("picks", Whole.FromCount(joins.Length));
        LeftYarn = Derived.From<Length>("weft from the left", Rule, mean, picks, (x, n) => 2 * x * n);
        RightYarn = Derived.From<Length>("weft from the right", Rule, across, mean, picks, (w, x, n) => 2 * Math.Max(0, w - x) * n);
    }

    /// <summary>Each yarn goes to the join and back.</summary>
    public static Rule Rule { get; } = new(
        "clasped weft", "each pick holds two strands: left yarn 2x, right yarn 2(W − x), x = join from the left edge, W = width; before take-up", Source.Derivation);

    /// <summary>Width in the reed.</summary>
    public Length Width { get; }

    /// <summary>Where the yarns meet on each pick, from the left edge.</summary>
    public ImmutableArray<Length> Joins { get; }

    /// <summary>Yarn from the left for all picks, before take-up.</summary>
    public Derived<Length> LeftYarn { get; }

    /// <summary>Yarn from the right for all picks, before take-up.</summary>
    public Derived<Length> RightYarn { get; }

    /// <summary>A plan from its joins.</summary>
    /// <param name="width">Width in the reed, above 0.</param>
    /// <param name="joins">Where the yarns meet on each pick, from the left edge; 0 to the width.</param>
    public static Parsed<ClaspedWeft> Of(Length width, IReadOnlyList<Length> joins)
    {
        if (width <= Length.Zero) return new InputProblem($"A cloth {width} wide cannot be woven.", "width", "Give the width in the reed, for example 24 cm.");
        if (joins.Count is 0 or > MostPicks) return new InputProblem($"{joins.Count} picks cannot be planned.", "joins", $"Give 1 to {MostPicks} picks.");
        for (int pick = 0; pick < joins.Count; pick++)
        {
            if (joins[pick] > width) return new InputProblem($"The yarns meet at {joins[pick]}, beyond the width of {width}.", $"joins[{pick}]", $"Give a place from 0 to {width}.");
        }

        return new ClaspedWeft(width, [.. joins]);
    }

    /// <summary>A plan whose joins follow straight lines from point to point.</summary>
    /// <param name="width">Width in the reed, above 0.</param>
    /// <param name="picks">Picks, above 0.</param>
    /// <param name="points">Points the boundary passes through: pick (from 1, rising) and place from the left edge. Before the first and after the last it runs straight on along the cloth.</param>
    public static Parsed<ClaspedWeft> Along(Length width, int picks, IReadOnlyList<(int Pick, Length Join)> points)
    {
        if (picks is < 1 or > MostPicks) return new InputProblem($"{picks} picks cannot be planned.", "picks", $"Give 1 to {MostPicks} picks.");
        if (points.Count == 0) return new InputProblem("The boundary passes through no point.", "points", "Give a pick and a place, for example pick 1 at 6 cm.");
        for (int i = 1; i < points.Count; i++)
        {
            if (points[i].Pick <= points[i - 1].Pick)
            {
                return new InputProblem($"Pick {points[i].Pick} follows pick {points[i - 1].Pick}.", $"points[{i}].pick", "Give the points in the order of weaving, one a pick.");
            }
        }

        return Of(width, [.. Enumerable.Range(1, picks).Select(p => Between(points, p))]);
    }

    private static Length Between(IReadOnlyList<(int Pick, Length Join)> points, int pick)
    {
        if (pick <= points[0].Pick) return points[0].Join;
        for (int i = 1; i < points.Count; i++)
        {
            (int last, Length from) = points[i - 1];
            (int next, Length to) = points[i];
            if (pick <= next) return Length.FromMetres(from.Metres + (to.Metres - from.Metres) * (pick - last) / (next - last));
        }

        return points[^1].Join;
    }
}
