using System.Collections.Immutable;
using Clothwright.Core.Cloths.Stages;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Puckering;

/// <summary>Whether a washed cloth lies flat, across its width and along its length.</summary>
/// <param name="AcrossTheWidth">Ends that draw in unlike: stripes lengthwise.</param>
/// <param name="AlongTheLength">Picks that draw in unlike: stripes crosswise.</param>
public sealed record ClothPuckering(PuckeringRisk AcrossTheWidth, PuckeringRisk AlongTheLength)
{
    // Narrower than this a zone is held by its neighbours: the texture of the weave, not a pucker.
    private const int LeastThreads = 4;

    // Longest stretch that is looked at, in threads.
    private const int LongestRound = 4096;

    private static readonly Rule LiftRule = new("height of a buckle", "2 ÷ π × zone width × √excess: a sine as long as two zones", Source.Derivation);

    /// <summary>Judges a cloth.</summary>
    /// <param name="cloth">The cloth from the reed to the washed piece.</param>
    public static ClothPuckering Of(ClothStages cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ClothGeometry washed = cloth.Washed;
        return new ClothPuckering(
            Risk("end", washed.CrimpPerEnd, washed.Question.Warp, cloth.LengthShrinkage, washed.WarpCrimp, washed.Question.Ends),
            Risk("pick", washed.CrimpPerPick, washed.Question.Weft, cloth.WidthShrinkage, washed.WeftCrimp, washed.Question.Picks));
    }

    private static PuckeringRisk Risk(string thread, ImmutableArray<double> crimps, ThreadSystem threads, Derived<Ratio> shrinkage, Derived<Ratio> meanCrimp, Derived<Sett> sett)
    {
        int length = (int)Math.Min(CommonRepeat.Of(crimps.Length, threads.Order.Repeat.Length), LongestRound);
        double meanFibre = WashingShrinkage.OfFibres(threads, "shrinkage").Value.Value;
        // The cloth's shrinkage is shared out to the yarns as their fibres' customary ones are.
        double[] shares = [.. threads.Yarns.Select(y => meanFibre > 0 ? y.Fibres.WashingShrinkage.Value.Value / meanFibre : 1)];
        double[] contraction = [.. Enumerable.Range(0, length).Select(i => Contraction(crimps[i % crimps.Length], shrinkage.Value.Value * shares[threads.Order[i]]))];
        double middle = (contraction.Max() + contraction.Min()) / 2;
        (ImmutableArray<int> tight, ImmutableArray<int> slack) = contraction.Max() - contraction.Min() < 1e-9
            ? ([.. Enumerable.Range(0, length)], ImmutableArray<int>.Empty)
            : (Widest(contraction, c => c > middle), Widest(contraction, c => c <= middle));
        bool zones = tight.Length >= LeastThreads && slack.Length >= LeastThreads;
        Derived<Ratio> most = Zone($"contraction of the tightest {thread}s", tight);
        Derived<Ratio> least = Zone($"contraction of the slackest {thread}s", slack.IsEmpty ? tight : slack);
        Derived<Ratio> excess = Derived.From<Ratio>(
            "length over", new Rule("length over", "(1 − least contraction) ÷ (1 − most contraction) − 1", Source.Derivation), most, least, (m, l) => Math.Max(0, (1 - l) / (1 - m) - 1));
        Derived<Length> width = Derived.From<Length>(
            "width of the slack zone", new Rule("width of a zone", $"{(zones ? slack.Length : 0)} threads ÷ sett", Source.Derivation), sett, s => zones ? slack.Length / s : 0);
        return new PuckeringRisk
        {
            Most = most,
            Least = least,
            Excess = excess,
            ZoneWidth = width,
            Lift = Derived.From<Length>("height of the buckle", LiftRule, width, excess, (w, e) => 2 / Math.PI * w * Math.Sqrt(e)),
            Tightest = tight,
            Slackest = slack,
        };

        // The zone's own crimp and fibre, moved with what moves the whole cloth's.
        Derived<Ratio> Zone(string label, ImmutableArray<int> members)
        {
            double crimp = members.Average(i => crimps[i % crimps.Length]);
            double part = members.Average(i => shares[threads.Order[i]]);
            double whole = meanCrimp.Value.Value;
            double ratio = whole > 0 ? crimp / whole : 0;
            return Derived.From<Ratio>(
                label,
                new Rule("contraction of a thread", $"1 − (1 − {part:0.##} × shrinkage) ÷ (1 + {ratio:0.##} × crimp)", Source.Derivation),
                meanCrimp,
                shrinkage,
                (c, s) => Contraction(ratio * c, part * s));
        }
    }

    private static double Contraction(double crimp, double shrinkage) => Math.Clamp(1 - (1 - Math.Min(shrinkage, 0.95)) / (1 + crimp), 0, 0.99);

    // Longest run of threads of a kind, read round the repeat.
    private static ImmutableArray<int> Widest(double[] values, Func<double, bool> kind)
    {
        int start = Array.FindIndex(values, v => !kind(v)) + 1;
        ImmutableArray<int> widest = [];
        var run = new List<int>();
        for (int step = 0; step <= values.Length; step++)
        {
            int i = (start + step) % values.Length;
            if (step < values.Length && kind(values[i])) run.Add(i);
            else
            {
                if (run.Count > widest.Length) widest = [.. run];
                run.Clear();
            }
        }

        return widest;
    }
}
