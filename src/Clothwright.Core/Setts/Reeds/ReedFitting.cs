using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Setts.Reeds;

/// <summary>Finds for each reed and rigid heddle she owns the sley that comes nearest to a wanted sett.</summary>
public static class ReedFitting
{
    // A sequence of up to five dents is kept in the head. A short one that is near enough is preferred to a longer, nearer one:
    // setts for a purpose are no sharper than that, the width absorbs the rest, and even dents leave no marks.
    private static readonly ImmutableArray<double> NearEnough = [0.04, 0.03, 0.02, 0.015, 0.015];
    private const double Crowded = 4;

    private static readonly ImmutableArray<Sley> HeddleSleys = [Sley.Of(1), Sley.Of(1, 0), Sley.Of(1, 1, 0)];

    /// <summary>The fits, nearest first.</summary>
    /// <param name="wanted">Sett on the loom, all layers together.</param>
    /// <param name="reeds">Reeds she owns.</param>
    /// <param name="heddles">Rigid heddles she owns.</param>
    /// <param name="heddlesAtOnce">Heddles that her frame can carry at once.</param>
    public static ImmutableArray<ReedFit> Fits(
        Sett wanted, ImmutableArray<Reed> reeds, ImmutableArray<RigidHeddle> heddles, int heddlesAtOnce = LoomChecks.MostRigidHeddles)
    {
        IEnumerable<ReedFit> inReeds = reeds.Select(r => InReed(wanted, r));
        IEnumerable<ReedFit> inHeddles = heddles.SelectMany(h => Enumerable
            .Range(1, Math.Clamp(Math.Min(h.Count, heddlesAtOnce), 0, LoomChecks.MostRigidHeddles))
            .Select(count => InHeddles(wanted, h, count)));
        return [.. inReeds.Concat(inHeddles).OrderBy(f => Math.Abs(f.Error.Value)).ThenBy(f => f.Sley.Dents).ThenBy(f => f.Heddles)];
    }

    /// <summary>The nearest sley in one reed.</summary>
    /// <param name="wanted">Sett on the loom.</param>
    /// <param name="reed">The reed.</param>
    public static ReedFit InReed(Sett wanted, Reed reed)
    {
        ArgumentNullException.ThrowIfNull(reed);
        double mean = wanted.PerMetre / reed.Dents.PerMetre;
        Sley[] sleys = [.. Enumerable.Range(1, NearEnough.Length)
            .Select(dents => Sley.Even(Math.Clamp((int)Math.Round(mean * dents), 1, Sley.MostEndsInADent * dents), dents))];
        Sley best = sleys.FirstOrDefault(s => Off(s) <= NearEnough[s.Dents - 1]) ?? sleys.MinBy(Off)!;
        return Fit(wanted, reed.Name, reed.Dents, best) with { MarksLikely = MarksLikely(best), Warnings = Warnings(best) };

        double Off(Sley sley) => Math.Abs(sley.MeanEndsPerDent / mean - 1);
    }

    private static ReedFit InHeddles(Sett wanted, RigidHeddle heddle, int count)
    {
        Sett spaces = heddle.Spaces * count;
        double mean = wanted.PerMetre / spaces.PerMetre;
        Sley best = HeddleSleys.OrderBy(s => Math.Abs(s.MeanEndsPerDent / mean - 1)).ThenBy(s => s.Dents).First();
        string name = count == 1 ? heddle.Name : $"{count} × {heddle.Name}";
        ImmutableArray<string> warnings = best.IsEven
            ? []
            : [$"Leave spaces empty ({best}) and keep the order at the joins; wash a sample, the gaps close only in yarn that blooms."];
        return Fit(wanted, name, spaces, best) with { Heddles = count, Warnings = warnings, MarksLikely = !best.IsEven };
    }

    private static ReedFit Fit(Sett wanted, string name, Sett dents, Sley sley)
    {
        Sett sett = sley.In(dents);
        return new ReedFit(name, dents, sley, sett, Ratio.FromValue(sett.PerMetre / wanted.PerMetre - 1));
    }

    private static bool MarksLikely(Sley sley) => !sley.IsEven || sley.EndsPerDent[0] >= 3 || sley.EndsPerDent.Contains(0);

    private static ImmutableArray<string> Warnings(Sley sley)
    {
        var warnings = ImmutableArray.CreateBuilder<string>();
        if (sley.EndsPerDent.Contains(0))
        {
            warnings.Add($"Dents stay empty ({sley}): gaps show along the cloth unless the yarn blooms in washing; a coarser reed would be better.");
        }
        else if (!sley.IsEven)
        {
            warnings.Add($"Dents hold unequal numbers ({sley}): reed marks along the cloth; they wash out of wool and soft cotton, less of silk, linen and smooth bamboo.");
        }
        else if (sley.EndsPerDent[0] >= 3)
        {
            warnings.Add($"{sley.EndsPerDent[0]} ends share each dent: reed marks between the groups, and ends may roll over each other; a finer reed would be better.");
        }

        if (sley.MeanEndsPerDent > Crowded) warnings.Add("So many ends in a dent rub and cling; knots will not pass.");
        return warnings.ToImmutable();
    }
}
