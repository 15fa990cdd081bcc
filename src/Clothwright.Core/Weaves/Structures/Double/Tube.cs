using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Tube: two layers woven in turn with one shuttle, joined on both sides.</summary>
public static class Tube
{
    /// <summary>One repeat: top, bottom, top, bottom.</summary>
    /// <param name="start">The side from which the first pick is thrown.</param>
    public static Weave Of(ClothSide start = ClothSide.Left) =>
        LayeredWeave.InOrder("tube", 2, [(1, false), (2, false), (1, true), (2, true)]) with
        {
            FirstPickFrom = start,
            Notes =
            [
                $"One shuttle; throw the first pick from the {Side(start)}.",
                $"Take an odd number of ends, the end left out being on the {Side(start)}: plain weave then runs round both folds.",
            ],
        };

    /// <summary>The tube at a size; of an odd number of ends the one left out is on the starting side.</summary>
    /// <param name="size">Ends and picks of both layers together.</param>
    /// <param name="start">The side from which the first pick is thrown.</param>
    /// <exception cref="InputProblemException">The size is outside its limits.</exception>
    public static Weave Of(WeaveSize size, ClothSide start = ClothSide.Left)
    {
        Weave repeat = Of(start);
        return size.Ends % 2 == 0
            ? repeat.Sized(size).Noting($"{size.Ends} ends are even in number: at the fold on the {Side(start)} two ends lie in one shed at every turn. Take {size.Ends - 1} or {size.Ends + 1}.")
            : repeat.Sized(size, start == ClothSide.Left ? 1 : 0);
    }

    internal static string Side(ClothSide edge) => edge == ClothSide.Left ? "left" : "right";
}
