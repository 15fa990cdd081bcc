using System.Collections.Immutable;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Places;

namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>Mean light of a thread across and along one crossing, for cloth seen from afar.</summary>
/// <remarks>
/// For each half of the crossing, the thread above or below, going on level or changing sides: how much of its own colour and how much of
/// the lamp's it sends. Numbers: cover, then body and gloss of each state; states above level, above falling to the near side, above
/// falling to the far side, then the same three below.
/// </remarks>
internal static class FarLight
{
    /// <summary>Numbers of one look.</summary>
    public const int Parts = 16;

    /// <summary>States of half a crossing.</summary>
    public const int States = 6;

    private const int Across = 24;
    private const int Along = 12;
    private const int Fine = 200;

    /// <summary>Means of every look.</summary>
    /// <param name="numbers">The cloth.</param>
    /// <param name="lights">Light tables under this lamp.</param>
    /// <param name="ends">Places of the ends.</param>
    /// <param name="picks">Places of the picks.</param>
    public static float[] Of(LookNumbers numbers, LightTable[] lights, ThreadPlaces ends, ThreadPlaces picks)
    {
        int count = numbers.Looks.Length / LookNumbers.PerLook;
        var far = new float[count * Parts];
        for (int number = 0; number < count; number++)
        {
            ReadOnlySpan<float> look = numbers.Looks.AsSpan(number * LookNumbers.PerLook, LookNumbers.PerLook);
            bool warp = numbers.Lights[(int)look[15]].Direction == ThreadDirection.Warp;
            ThreadPlaces other = warp ? picks : ends;
            double crimp = warp ? numbers.WarpHeight : numbers.WeftHeight;

            double place = Math.Max(look[3], look[20]);
            double gap = 1 - Math.Min(1, MeanWidth(numbers, !warp) / other.Pitch);
            Span<float> entry = far.AsSpan(number * Parts, Parts);
            entry[0] = (float)Cover(look, place);
            for (int state = 0; state < States; state++)
            {
                (entry[1 + 2 * state], entry[2 + 2 * state]) = Mean(numbers, lights[(int)look[15]], look, place, crimp, state, gap);
            }
        }

        return far;
    }

    // Mean width of the threads that have a place of their own.
    private static double MeanWidth(LookNumbers numbers, bool warp)
    {
        ThreadRound round = warp ? numbers.Ends : numbers.Picks;
        ImmutableArray<bool> shared = warp ? numbers.Description.SharedEnds : numbers.Description.SharedPicks;
        return round.Looks.Where((_, i) => !ThreadPlaces.IsShared(shared, i)).Average(l => numbers.Looks[l * LookNumbers.PerLook + 3]);
    }

    // Share of the place that the thread covers, its hairs counted by how dense they are.
    private static double Cover(ReadOnlySpan<float> look, double place)
    {
        if (look[5] <= 0) return Math.Min(1, look[3] / place);
        double sum = 0;
        for (int i = 0; i < Fine; i++) sum += CoverAt(look, (i + 0.5) / Fine * place / look[3]);
        return sum / Fine;
    }

    // Middles of equal parts across what is seen of the thread.
    private static double V(int step, ReadOnlySpan<float> look, double place) =>
        ((step + 0.5) / Across * 2 - 1) * Math.Min(place / look[3], 1 + 0.7 * look[5]);

    private static double CoverAt(ReadOnlySpan<float> look, double across) =>
        look[5] > 0 ? 1 - ClothPainter.Smooth(1 - 0.7f * look[5], 1 + 0.7f * look[5], (float)Math.Abs(across)) : Math.Abs(across) < 1 ? 1 : 0;

    private static (float Body, float Gloss) Mean(LookNumbers numbers, LightTable light, ReadOnlySpan<float> look, double place, double crimp, int state, double gap)
    {
        bool above = state < 3;
        int turn = state % 3;
        double here = above ? 1 : 0;
        double next = turn == 0 ? here : 1 - here;
        int side = turn == 1 ? -1 : 1;

        // What lies below is seen only in the gap beside what lies on it.
        double from = above ? 0 : 0.5 * (1 - Math.Max(gap, 0.05));
        double body = 0;
        double gloss = 0;
        double weight = 0;
        for (int j = 0; j < Along; j++)
        {
            double t = from + (0.5 - from) * (j + 0.5) / Along;
            double rise = (1 - Math.Cos(Math.PI * t)) / 2;
            float slope = (float)((next - here) * Math.Sin(Math.PI * t) * side);
            for (int i = 0; i < Across; i++)
            {
                double across = V(i, look, place);
                double cover = CoverAt(look, across);
                if (cover <= 0) continue;
                double bulge = Math.Sqrt(Math.Max(0, 1 - across * across));
                double height = (here + (next - here) * rise - 0.5) * crimp + look[4] * 0.5 * bulge;
                double shadow = 0.4 + 0.6 * ClothPainter.Smooth(-0.35f, 0.5f, (float)(height / numbers.Thickness));
                shadow += (1 - shadow) * look[5] * 0.5;
                if (look[8] != 0) shadow *= MeanGroove;
                (float b, float g, float rim) = light.At(slope, (float)Math.Clamp(across, -1, 1));
                body += cover * (shadow * (Lighting.Ambient + Lighting.Key * b) + look[5] * rim * ClothPainter.RimShare);
                gloss += cover * Lighting.Key * shadow * g;
                weight += cover;
            }
        }

        return weight > 0 ? ((float)(body / weight), (float)(gloss / weight)) : (0, 0);
    }

    // Mean of ¾ + ¼ smoothstep over a groove: half of it in the slope of the step, whose mean is ½, half beyond.
    private const double MeanGroove = 0.75 + 0.25 * (0.5 * 0.5 + 0.5);
}
