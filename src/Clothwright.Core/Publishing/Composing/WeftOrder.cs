using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The wefts of a piece pick by pick, and in words.</summary>
internal static class WeftOrder
{
    private const int LongestDrawn = 4000;

    /// <summary>The weave of a piece.</summary>
    public static Weave WeaveOf(PlanResult plan, Piece piece) => piece.Weave ?? plan.Request.Weave;

    /// <summary>The runs pick by pick until weave and wefts begin again together; at most 4000 picks.</summary>
    public static ImmutableArray<WeftRun> Picks(PlanResult plan, Piece piece)
    {
        ImmutableArray<ThreadRole> roles = WeaveOf(plan, piece).PickRoles;
        WeftRun[] ground = [.. Thrown(piece.Weft)];
        WeftRun[] pattern = [.. Thrown(piece.PatternWeft)];
        if (pattern.Length == 0 || !roles.Contains(ThreadRole.Pattern)) return [.. ground.Take(LongestDrawn)];
        var picks = ImmutableArray.CreateBuilder<WeftRun>();
        int groundPicks = 0;
        int patternPicks = 0;
        do
        {
            foreach (ThreadRole role in roles)
            {
                picks.Add(role == ThreadRole.Pattern ? pattern[patternPicks++ % pattern.Length] : ground[groundPicks++ % ground.Length]);
            }
        }
        while (picks.Count < LongestDrawn && (groundPicks % ground.Length != 0 || patternPicks % pattern.Length != 0));

        return picks.ToImmutable();
    }

    /// <summary>Colours of the picks, once through the order.</summary>
    public static ImmutableArray<SrgbColour> Colours(PlanResult plan, Piece piece) => [.. Picks(plan, piece).Select(r => Yarn(plan, r.YarnId).Colour)];

    /// <summary>The wefts as lines to read.</summary>
    public static IEnumerable<string> Lines(PlanResult plan, Piece piece)
    {
        bool twoWefts = !piece.PatternWeft.IsEmpty;
        yield return $"{(twoWefts ? "Ground weft" : "Weft")}: {Runs(plan, piece.Weft)}.";
        if (twoWefts) yield return $"Pattern weft: {Runs(plan, piece.PatternWeft)}.";
    }

    /// <summary>A yarn of the shelf.</summary>
    public static Yarn Yarn(PlanResult plan, string id) => plan.Request.Shelf.First(y => y.Id == id);

    private static IEnumerable<WeftRun> Thrown(ImmutableArray<WeftRun> runs) => runs.SelectMany(r => Enumerable.Repeat(r, r.Picks)).Take(LongestDrawn);

    private static string Runs(PlanResult plan, ImmutableArray<WeftRun> runs) => runs.Length == 1
        ? Run(plan, runs[0])
        : $"{string.Join("; ", runs.Select(r => $"{Words.Of(r.Picks, "pick")} of {Run(plan, r)}"))}; over and over";

    private static string Run(PlanResult plan, WeftRun run)
    {
        string strands = run.Strands > 1 ? $", {Words.Spelled(run.Strands)} strands together" : "";
        string yarn = Yarn(plan, run.YarnId).Name;
        return run.ClaspedWith is { } other
            ? $"{yarn} from the left clasped with {Yarn(plan, other).Name} from the right{strands}; both lie doubled"
            : yarn + strands;
    }
}
