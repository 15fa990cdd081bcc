using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Checks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Wefts;

/// <summary>What lies in one pick: one strand, several side by side, or two yarns clasped round each other and doubled back.</summary>
/// <param name="Run">The decision.</param>
/// <param name="Lying">All that lies in the pick, taken as one thread of its mass.</param>
internal sealed record WeftThread(WeftRun Run, Yarn Lying)
{
    private static readonly Rule ClaspedRule = new(
        "clasped weft",
        "mass per length = 2 × (share of the first yarn × its mass per length + the rest × that of the second): each turns back round the other and lies double",
        Source.Derivation);

    /// <summary>The thread of a run.</summary>
    public static WeftThread Of(PlanRequest request, WeftRun run, string where)
    {
        Yarn first = RequestCheck.YarnOf(request, run.YarnId, $"{where}.yarn");
        if (run.ClaspedWith is { } other) return new WeftThread(run, Clasped(first, RequestCheck.YarnOf(request, other, $"{where}.claspedWith"), run));
        return new WeftThread(run, YarnStrands.SideBySide(first, run.Strands));
    }

    /// <summary>How often a yarn lies across the width in one pick, on the average.</summary>
    public IEnumerable<(string YarnId, double Times)> Yarns() => Run.ClaspedWith is { } other
        ? [(Run.YarnId, 2 * Run.ClaspShare * Run.Strands), (other, 2 * (1 - Run.ClaspShare) * Run.Strands)]
        : [(Run.YarnId, Run.Strands)];

    private static Yarn Clasped(Yarn first, Yarn second, WeftRun run)
    {
        Derived<Ratio> share = Derived.Decision("share of the first yarn", Ratio.FromValue(run.ClaspShare));
        Derived<Whole> strands = Derived.Decision("strands", Whole.FromCount(run.Strands));
        return first with
        {
            Name = $"{first.Name} clasped with {second.Name}",
            LinearDensity = Derived.From<LinearDensity>(
                "mass per length of a clasped pick",
                ClaspedRule,
                [first.LinearDensity, second.LinearDensity, share, strands],
                v => 2 * v[3] * (v[2] * v[0] + (1 - v[2]) * v[1])),
            MeasuredWraps = null,
        };
    }
}
