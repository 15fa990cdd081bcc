using Clothwright.Core.Colours;

namespace Clothwright.Core.Cloths.Faces;

/// <summary>The darker and the lighter part of a face, crossing by crossing, with the mean runs of each.</summary>
/// <param name="Darker">Light of the darker crossings.</param>
/// <param name="Lighter">Light of the lighter crossings.</param>
/// <param name="LighterShare">Share of the crossings that are lighter.</param>
/// <param name="MeanRunAcross">Mean run of one part along a pick, in ends; the whole width where it never changes.</param>
/// <param name="MeanRunAlong">Mean run of one part along an end, in picks; the whole length where it never changes.</param>
internal sealed record FaceParts(LinearColour Darker, LinearColour Lighter, double LighterShare, double MeanRunAcross, double MeanRunAlong)
{
    /// <summary>Parts a face so that the parts are told apart best.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="front">Whether the side towards the weaver is looked at.</param>
    /// <param name="told">How well two lights are told apart whose figures have a width, in metres.</param>
    public static FaceParts Of(ClothGeometry cloth, bool front, Func<LinearColour, LinearColour, double, double> told)
    {
        FaceCrossings crossings = FaceCrossings.Of(cloth, front);
        FaceParts? best = null;
        double bestTold = double.NegativeInfinity;
        int[] order = Widest([.. crossings.Colours.Select(OkLab.From)]);
        for (int cut = 1; cut < order.Length; cut++)
        {
            FaceParts parts = crossings.Part([.. order[cut..]]);
            double seen = told(parts.Darker, parts.Lighter, Math.Min(parts.MeanRunAcross / cloth.Question.Ends.Value.PerMetre, parts.MeanRunAlong / cloth.Question.Picks.Value.PerMetre));
            if (seen <= bestTold) continue;
            bestTold = seen;
            best = parts;
        }

        // One colour all over: its one part stands for both.
        return best ?? crossings.Part([.. order]);
    }

    // The colours in the order in which they lie between the two that are farthest apart.
    private static int[] Widest(OkLab[] labs)
    {
        (int One, int Other, double Apart) widest = (0, 0, 0);
        for (int i = 0; i < labs.Length; i++)
        {
            for (int j = i + 1; j < labs.Length; j++)
            {
                double apart = labs[i].DistanceTo(labs[j]);
                if (apart > widest.Apart) widest = (i, j, apart);
            }
        }

        (OkLab from, OkLab to) = (labs[widest.One], labs[widest.Other]);
        return [.. Enumerable.Range(0, labs.Length).OrderBy(i =>
            (labs[i].L - from.L) * (to.L - from.L) + (labs[i].A - from.A) * (to.A - from.A) + (labs[i].B - from.B) * (to.B - from.B))];
    }
}
