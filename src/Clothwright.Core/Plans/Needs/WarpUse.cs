using System.Collections.Immutable;
using Clothwright.Core.Plans.Lengths;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Needs;

/// <summary>How much of the length of each end ends up in pieces, and how much does not.</summary>
internal static class WarpUse
{
    private static readonly Rule KeptRule = new("warp in pieces", "warp in woven parts and fringes, less what is trimmed", Source.Derivation);

    /// <summary>Length of one end that stays in finished pieces.</summary>
    /// <param name="sections">The warp from front to back.</param>
    /// <param name="pieces">The pieces.</param>
    /// <param name="endsInPiece">Ends of a yarn woven in each piece.</param>
    /// <param name="ends">Ends of the yarn in the warp; above 0.</param>
    /// <remarks>Ends that hang idle beside a narrower piece are waste there, so each piece counts by its share of the ends.</remarks>
    public static Derived<Length> Kept(
        ImmutableArray<WarpSection> sections, ImmutableArray<PiecePlan> pieces, IReadOnlyList<int> endsInPiece, int ends)
    {
        var inputs = new List<IDerived>();
        var weights = new List<double>();
        foreach (WarpSection section in sections)
        {
            if (section.PieceIndex is not { } index) continue;
            double share = (double)endsInPiece[index] / ends;
            inputs.Add(section.Warp);
            weights.Add(share);
            if (section.Kind != WarpSectionKind.Fringe) continue;
            inputs.Add(FringeAllowance.Trimmed(pieces[index].Piece.Fringe));
            weights.Add(-share);
        }

        return Derived.From<Length>("warp of one end in pieces", KeptRule, inputs, v =>
        {
            double sum = 0;
            for (int i = 0; i < v.Length; i++) sum += v[i] * weights[i];
            return Math.Max(0, sum);
        });
    }
}
