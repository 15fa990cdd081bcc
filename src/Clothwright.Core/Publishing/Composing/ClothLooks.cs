using System.Collections.Immutable;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>How the washed cloths of a plan look.</summary>
public static class ClothLooks
{
    /// <summary>Front and back of each cloth that differs from those before it.</summary>
    internal static IEnumerable<HandoutBlock> Blocks(PlanResult plan)
    {
        IGrouping<string, PiecePlan>[] kinds = [.. plan.Pieces.GroupBy(p => Key(p.Piece), StringComparer.Ordinal)];
        foreach (IGrouping<string, PiecePlan> kind in kinds)
        {
            string whose = kinds.Length == 1 ? "The washed cloth" : $"The washed cloth of {Words.List(kind.Select(p => p.Piece.Name))}";
            string part = kind.First().Piece.Weft.Any(w => w.ClaspedWith is not null) ? " The part shown is where the two wefts meet." : "";
            yield return new ClothBlock(Of(plan, kind.First()), $"{whose} as it can be foreseen, at true size if printed without scaling.{part}");
        }
    }

    /// <summary>The look of one piece; of a tube or a cloth in double width, one layer.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="piece">One of its pieces.</param>
    /// <param name="washed">Whether it is washed; else as it comes off the loom.</param>
    public static LookDescription Of(PlanResult plan, PiecePlan piece, bool washed = true)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        int layers = piece.Piece.Make == PieceMake.Flat ? 1 : 2;
        int across = piece.Piece.Make == PieceMake.Tube ? 2 : 1;
        IEnumerable<ThreadRun> runs = layers == 1 ? plan.WarpRuns : plan.Request.Warp.Runs;
        Length width = washed ? piece.FinishedWidth.Value : Length.FromMetres(piece.FinishedWidth.Value.Metres / (1 - piece.ShrinkageInWidth.Value.Value));
        Length length = washed ? piece.ClothLength.Value : piece.OffLoomLength.Value;
        Weave weave = WeftOrder.WeaveOf(plan, piece.Piece);
        var threads = new YarnsInCloth(plan, washed);
        return new LookDescription(
            weave.Draft.Drawdown(),
            [.. runs.SelectMany(r => Enumerable.Repeat(threads.Of(r.YarnId), r.Threads))],
            [.. WeftOrder.Picks(plan, piece.Piece).Select(threads.Of)],
            Sett.FromPerMetre(plan.Ends.Total.Value.Count / (double)across / width.Metres),
            Sett.FromPerMetre(piece.Picks.Value.Count / (double)layers / length.Metres))
        {
            Width = width,
            Length = length,
            SharedEnds = SharedPlaces.Of(weave, weave.EndRoles),
            SharedPicks = SharedPlaces.Of(weave, weave.PickRoles),
        }.Bent(washed ? piece.Cloth.Washed : piece.Cloth.OffLoom);
    }

    private static string Key(Piece piece) =>
        $"{string.Join('/', piece.Weft)}|{string.Join('/', piece.PatternWeft)}|{piece.ChosenPicks}|{piece.Make}|{piece.Weave?.Draft.Drawdown()}";
}
