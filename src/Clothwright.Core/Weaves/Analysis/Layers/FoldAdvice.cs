using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>How to weave layers so that the weave runs on round the folds: the starting side, one end more or less.</summary>
/// <param name="Form">What the layers become as they are, started from the left.</param>
/// <param name="Options">Every starting side and change of one end that keeps the form, fewest faults first; of equals, the smaller change and the left first.</param>
public sealed record FoldAdvice(LayerForm Form, ImmutableArray<FoldOption> Options)
{
    /// <summary>The best arrangement; null when there is one layer or no fold.</summary>
    public FoldOption? Best => Options.FirstOrDefault();

    /// <summary>The advice as a sentence; empty when there is no fold.</summary>
    public string Text
    {
        get
        {
            if (Best is not { } best) return "";
            string side = best.Start == ClothSide.Left ? "left" : "right";
            string change = best.Change == EdgeChange.None ? "" : $" and {EdgeChanges.Text(best.Change)}";
            return best.Joins.Faults.IsEmpty
                ? $"Start the shuttle from the {side}{change}: the weave then runs on round every fold."
                : $"Start the shuttle from the {side}{change}: fewest folds then have two ends weaving as one ({best.Joins.Faults.Length} in a repeat).";
        }
    }

    /// <summary>Tries both starting sides and one end more or less.</summary>
    /// <param name="cloth">The drawdown at its full width.</param>
    /// <param name="shuttles">Which shuttle throws each pick; one for all if left out.</param>
    public static FoldAdvice For(Drawdown cloth, ThreadOrder? shuttles = null)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        LayerJoins asIs = LayerJoins.Of(cloth, ClothSide.Left, shuttles);
        if (asIs.Folds.IsEmpty) return new FoldAdvice(asIs.Form, []);
        var options =
            from change in new[] { EdgeChange.None, EdgeChange.DropFirst, EdgeChange.DropLast }
            let changed = EdgeChanges.Changed(cloth, change)
            from start in Enum.GetValues<ClothSide>()
            let joins = LayerJoins.Of(changed, start, shuttles)
            where joins.Form == asIs.Form
            select new FoldOption(start, change, joins);
        return new FoldAdvice(asIs.Form, [.. options.OrderBy(o => o.Joins.Faults.Length).ThenBy(o => o.Change != EdgeChange.None)]);
    }
}
