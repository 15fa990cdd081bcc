using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves;

/// <summary>Finds the tie-up that weaves a given cloth with a given threading and treadling.</summary>
public static class TieUpCompletion
{
    /// <summary>Completes a draft whose threading and treadling are known.</summary>
    /// <remarks>
    /// A treadle can be tied to a shaft only if every crossing of its picks with the ends of that shaft shows the moved thread. All such ties
    /// are made; if they do not weave the cloth, nothing does.
    /// </remarks>
    /// <param name="draft">Threading, treadling and shed; tie-up and lift plan are not looked at.</param>
    /// <param name="cloth">What is to be woven, as many ends and picks as the draft has.</param>
    /// <returns>The draft with its tie-up, or the first crossing that no tie-up can weave.</returns>
    public static Parsed<Draft> Of(Draft draft, Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(cloth);
        if (draft.Ends != cloth.Ends || draft.Treadling.Length != cloth.Picks)
        {
            return new InputProblem(
                $"The threading has {draft.Ends} ends and the treadling {draft.Treadling.Length} picks, the cloth {cloth.Ends} by {cloth.Picks}.",
                "tie-up",
                "Give threading and treadling as many ends and picks as the cloth has.");
        }

        int treadles = Math.Max(draft.Treadles, draft.Treadling.Max(p => p.Max));
        var allowed = new ulong[treadles];
        Array.Fill(allowed, ShaftSet.FirstOf(draft.Shafts).Bits);
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            ulong still = 0;
            for (int end = 0; end < cloth.Ends; end++)
            {
                if (cloth[pick, end] != draft.RisingShed) still |= draft.Threading[end].Bits;
            }

            foreach (int treadle in draft.Treadling[pick].Members()) allowed[treadle - 1] &= ~still;
        }

        Draft complete = draft with { TieUp = [.. allowed.Select(a => new ShaftSet(a))], LiftPlan = [] };
        Drawdown woven = complete.Drawdown();
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            for (int end = 0; end < cloth.Ends; end++)
            {
                if (woven[pick, end] == cloth[pick, end]) continue;
                return new InputProblem(
                    $"No tie-up of this threading and treadling weaves end {end + 1} on pick {pick + 1} as drawn.",
                    $"drawdown, pick {pick + 1}, end {end + 1}",
                    "Ends on one shaft weave alike, and so do picks on one treadle: thread or treadle this one differently.");
            }
        }

        return complete;
    }
}
