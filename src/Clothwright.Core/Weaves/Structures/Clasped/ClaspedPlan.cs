using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Plain weave with clasped weft or clasped warp, and the plan of its colour areas.</summary>
public static class ClaspedPlan
{
    // Neighbouring ends are joined on different picks.
    private const int WarpStagger = 2;

    /// <summary>Clasped weft: two yarns meet in each shed.</summary>
    /// <param name="percent">Places of the join from the first pick to the last, per cent of the width from the left.</param>
    /// <param name="size">Ends and picks; a repeat of plain weave without a plan if null.</param>
    /// <exception cref="InputProblemException">The size is outside its limits.</exception>
    public static Weave Weft(IReadOnlyList<int> percent, WeaveSize? size) => Planned("clasped weft", ClaspedWeft.Rule, size, s => ColourAreas.Along(true, s.Picks, s.Ends, percent))
        .Noting("Each pick holds two strands: count the weft yarn double and open the sett for the thicker pick.");

    /// <summary>Clasped warp: two yarns meet along each end, wound so on the warping board.</summary>
    /// <param name="percent">Places of the join from the first end to the last, per cent of the length from the front.</param>
    /// <param name="size">Ends and picks; a repeat of plain weave without a plan if null.</param>
    /// <exception cref="InputProblemException">The size is outside its limits.</exception>
    public static Weave Warp(IReadOnlyList<int> percent, WeaveSize? size) => Planned("clasped warp", ClaspedWarp.Rule, size, s => ColourAreas.Along(false, s.Ends, s.Picks, percent, WarpStagger))
        .Noting("Each end holds two strands: count the warp yarn double and set it as the doubled yarn.", "The joins of neighbouring ends lie on different picks, so that the loops do not crowd.");

    private static Weave Planned(string name, Rule rule, WeaveSize? size, Func<WeaveSize, ColourAreas> areas)
    {
        Weave plain = PlainWeave.Of() with { Name = name, Rule = rule, Pictured = new WeaveSize(36, 48) };
        if (size is not { } wanted) return plain;
        ColourAreas plan = areas(wanted);
        return plain.Sized(wanted) with
        {
            Areas = plan,
            Notes =
            [
                .. plan.InWords(12),
                string.Create(CultureInfo.InvariantCulture, $"The first yarn fills {plan.FirstShare * 100:0} % of the cloth: of each of its threads it takes 2 × {plan.FirstShare:0.00} of the {(plan.AlongPicks ? "width" : "length")}, the second 2 × {1 - plan.FirstShare:0.00}."),
            ],
        };
    }
}
