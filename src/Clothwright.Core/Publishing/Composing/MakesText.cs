using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>One sentence that says what a plan makes.</summary>
internal static class MakesText
{
    /// <summary>The sentence.</summary>
    public static string Of(PlanResult plan)
    {
        string pieces = Words.List(plan.Request.Pieces.GroupBy(Alike).Select(g => Group([.. g])));
        string weave = plan.Request.Weave.Name.Length == 0 ? "" : $", in {plan.Request.Weave.Name}";
        string loom = $", on {plan.Loom.Name}";
        return Words.Sentence($"{pieces}{weave}{loom}.");
    }

    private static (PieceKind, Length, Length, FringeStyle, RingJoin, PieceMake, bool) Alike(Piece p) =>
        (p.Kind, p.Width, p.Length, p.Fringe, p.Join, p.Make, p.Hem > Length.Zero);

    private static string Group(Piece[] pieces)
    {
        Piece first = pieces[0];
        int count = pieces.Sum(p => p.Count);
        string[] parts =
        [
            $"{PieceWords.Several(count, first.Kind)} of {PieceWords.Size(first, UnitStyle.Metric)} ({PieceWords.Size(first, UnitStyle.Customary)})",
            PieceWords.Ends(first),
            PieceWords.Make(first.Make),
        ];
        return string.Join(" ", parts.Where(p => p.Length > 0));
    }
}
