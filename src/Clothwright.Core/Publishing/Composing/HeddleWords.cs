using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Weaves.RigidHeddles;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Where the ends go on several rigid heddles, and what lies on pick-up sticks.</summary>
internal static class HeddleWords
{
    private const int MostEnds = 24;

    /// <summary>Lines to thread by; none for one heddle threaded in turn, or where the draft cannot be laid out.</summary>
    public static IEnumerable<string> Of(PlanResult plan)
    {
        if (ShedWords.OnHeddles(plan) is not { CanBeWoven: true } heddles) yield break;
        if (heddles.Heddles > 1 && heddles.Groups.Length <= MostEnds)
        {
            yield return $"One repeat from the left: {Words.List(heddles.Groups.Select(g => g > heddles.Heddles ? heddles.Heddles == 2 ? "slots of both" : "slots of all" : $"an eye of heddle {Words.Count(g)}"))}.";
        }

        foreach (PickUpStick stick in heddles.Sticks)
        {
            ImmutableArray<int> ends = stick.Ends;
            string whose = ends.Length == 1 ? "end" : "ends";
            yield return $"Stick {Words.Count(stick.Number)} behind the heddles takes up, of the ends in slots, {whose} {Words.List(ends.Select(e => Words.Count(e + 1)))} of each repeat.";
        }
    }
}
