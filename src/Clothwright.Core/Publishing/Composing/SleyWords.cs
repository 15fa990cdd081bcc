using Clothwright.Core.Plans;
using Clothwright.Core.Setts.Reeds;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The sley in words.</summary>
internal static class SleyWords
{
    /// <summary>The reed or heddles of a plan with their sley.</summary>
    public static string Tool(PlanResult plan)
    {
        string sett = Words.Both(plan.Sett);
        if (plan.Reed is not { } fit) return $"One that gives {sett}; none on the bench does";
        return fit.Heddles switch
        {
            0 => $"{fit.Name}, {Order(fit.Sley)}, which gives {sett}",
            1 when ToolsText.HeddleCount(plan) is > 1 and var heddles =>
                $"{Words.Sentence(Words.Spelled(heddles))} of {fit.Name}, each end in an eye of one or in slots of all, which gives {sett}",
            1 => $"{fit.Name}, one end in each eye and slot, which gives {sett}",
            _ => $"{fit.Name} together, one end in each eye and slot of every heddle, which gives {sett}",
        };
    }

    /// <summary>The order of the sley, for example <c>2 ends in each dent</c> or <c>1, 1 and 2 ends to a dent in turn, over and over</c>.</summary>
    public static string Order(Sley sley) => sley.IsEven
        ? $"{Words.Of(sley.EndsPerDent[0], "end")} in each dent"
        : $"{Words.List(sley.EndsPerDent.Select(Words.Count))} ends to a dent in turn, over and over";
}
