using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Ends;

/// <summary>Finds the number of ends for a width: whole repeats, balancing ends, selvedges.</summary>
internal static class EndsReckoning
{
    private static readonly Rule WantedRule = new("ends for a width", "ends = width in the reed × ends per width × layers", Source.Derivation);

    private static readonly Rule TotalRule = new(
        "ends fitted to the repeat", "ends = repeats × ends in a repeat + balancing ends + selvedge ends + floating selvedges", Source.Derivation);

    private static readonly Rule WidthRule = new("width in the reed", "width = ends ÷ (ends per width × layers)", Source.Derivation);

    /// <summary>Ends for a width of one layer in the reed.</summary>
    /// <param name="request">The decisions.</param>
    /// <param name="reedWidth">Width wanted in the reed.</param>
    /// <param name="sett">Ends per width in the reed, one layer.</param>
    /// <param name="layers">Layers woven at once.</param>
    public static EndsPlan For(PlanRequest request, Derived<Length> reedWidth, Derived<Sett> sett, int layers)
    {
        Weave weave = request.Weave;
        int floating = request.FloatingSelvedges ? 2 : 0;
        int selvedges = 2 * request.SelvedgeEnds * layers;
        Derived<Number> wanted = Derived.From<Number>("ends wanted", WantedRule, reedWidth, sett, (width, n) => width * n * layers);
        double pattern = Math.Max(1, wanted.Value.Value - selvedges - floating) / layers;
        RepeatFit fit = request.EndsFit == EndsFit.WholeRepeats
            ? RepeatFit.Nearest(pattern, weave.RepeatEnds, weave.BalancingEnds)
            : RepeatFit.Cut(pattern, weave.RepeatEnds);
        int repeatEnds = weave.RepeatEnds * layers;
        int balancing = fit.BalancingEnds * layers;
        Derived<Whole> total = Derived.From<Whole>(
            "ends",
            TotalRule,
            [
                wanted,
                Derived.Decision("repeats", Whole.FromCount(fit.Repeats)),
                Derived.Decision("ends in a repeat", Whole.FromCount(repeatEnds)),
                Derived.Decision("balancing ends", Whole.FromCount(balancing)),
                Derived.Decision("selvedge ends", Whole.FromCount(selvedges)),
                Derived.Decision("floating selvedges", Whole.FromCount(floating)),
            ],
            v => v[1] * v[2] + v[3] + v[4] + v[5]);
        return new EndsPlan
        {
            Wanted = wanted,
            RepeatEnds = repeatEnds,
            Repeats = fit.Repeats,
            BalancingEnds = balancing,
            SelvedgeEnds = selvedges,
            FloatingSelvedges = floating,
            Total = total,
        };
    }

    /// <summary>Width of a number of ends in the reed.</summary>
    public static Derived<Length> ReedWidth(Derived<Whole> ends, Derived<Sett> sett, int layers) =>
        Derived.From<Length>("width in the reed", WidthRule, ends, sett, (count, n) => count / (n * layers));
}
