using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Plans.Checks;

/// <summary>Finds what keeps one piece from being planned.</summary>
internal static class PieceCheck
{
    // Longer than any warp wound by hand, wider than any loom opened out.
    private static readonly Length Longest = Length.FromMetres(200);

    private static readonly Length Widest = Length.FromMetres(12);

    /// <summary>The first thing that is wrong with a piece, or null.</summary>
    public static InputProblem? Problem(PlanRequest request, Piece piece, string where)
    {
        if (piece.Width == Length.Zero) return new InputProblem($"\"{piece.Name}\" is 0 wide.", $"{where}.width", "Give the finished width, for example 21 cm.");
        if (piece.Length == Length.Zero) return new InputProblem($"\"{piece.Name}\" is 0 long.", $"{where}.length", "Give the finished length, for example 180 cm.");
        if (piece.Length > Longest) return new InputProblem($"\"{piece.Name}\" is {piece.Length} long.", $"{where}.length", $"Give at most {Longest}; weave more in several warps.");
        if (piece.Width > Widest) return new InputProblem($"\"{piece.Name}\" is {piece.Width} wide.", $"{where}.width", $"Give at most {Widest}, for example 21 cm.");
        if (piece.Count < 1) return new InputProblem($"\"{piece.Name}\" is to be woven {piece.Count} times.", $"{where}.count", "Give 1 or more.");
        if (piece.Fringe != FringeStyle.None && piece.FringeLength == Length.Zero)
        {
            return new InputProblem($"The fringe of \"{piece.Name}\" is 0 long.", $"{where}.fringe.length", "Give its finished length, for example 12 cm, or take the fringe out.");
        }

        if (piece.Join != RingJoin.None && piece.Fringe != FringeStyle.None)
        {
            return new InputProblem($"\"{piece.Name}\" is joined in a ring and so has no ends for a fringe.", $"{where}.fringe", "Take out the fringe, or set \"join\" to \"none\".");
        }

        Weave weave = piece.Weave ?? request.Weave;
        return Threading(request, piece, where)
            ?? Runs(request, piece.Weft, $"{where}.weft", "A piece has at least one weft.")
            ?? Pattern(request, piece, weave, where);
    }

    private static InputProblem? Threading(PlanRequest request, Piece piece, string where)
    {
        if (piece.Weave is not { } own || own.Draft.Threading.SequenceEqual(request.Weave.Draft.Threading)) return null;
        return new InputProblem(
            $"The weave of \"{piece.Name}\" is threaded otherwise than the warp ({own.Draft.Ends} ends a repeat against {request.Weave.Draft.Ends}).",
            $"{where}.weave",
            "Use a weave with the threading of the warp, another tie-up or treadling only, or plan a warp of its own.");
    }

    private static InputProblem? Pattern(PlanRequest request, Piece piece, Weave weave, string where)
    {
        ImmutableArray<WeftRun> pattern = piece.PatternWeft.IsDefault ? [] : piece.PatternWeft;
        if (weave.HasPatternPicks && pattern.IsEmpty)
        {
            return new InputProblem(
                $"{weave.Name} has pattern picks, and \"{piece.Name}\" has no yarn for them.", $"{where}.patternWeft", "Name a yarn for the pattern; \"weft\" is the tabby between.");
        }

        if (!weave.HasPatternPicks && !pattern.IsEmpty)
        {
            return new InputProblem(
                $"{weave.Name} has no pattern picks for the pattern weft of \"{piece.Name}\".", $"{where}.patternWeft", "Take it out, or choose a weave with pattern picks.");
        }

        if (weave.PickRoles.All(r => r == ThreadRole.Pattern))
        {
            return new InputProblem($"{weave.Name} has pattern picks only and no ground to hold them.", $"{where}.weave", "Put tabby picks between the pattern picks.");
        }

        return pattern.IsEmpty ? null : Runs(request, pattern, $"{where}.patternWeft", "");
    }

    private static InputProblem? Runs(PlanRequest request, ImmutableArray<WeftRun> runs, string where, string none)
    {
        if (runs.IsDefaultOrEmpty) return new InputProblem(none, where, "Name at least one yarn of the shelf.");
        long picks = runs.Sum(r => (long)r.Picks);
        if (picks > DraftLimits.Picks) return new InputProblem($"The order holds {picks} picks.", where, $"Give at most {DraftLimits.Picks}; an order repeats by itself.");
        for (int i = 0; i < runs.Length; i++)
        {
            WeftRun run = runs[i];
            string at = $"{where}[{i}]";
            if (run.Picks < 1) return new InputProblem($"A run of {run.Picks} picks cannot be thrown.", $"{at}.picks", "Give at least 1 pick.");
            if (run.Strands < 1) return new InputProblem($"A pick of {run.Strands} strands cannot be thrown.", $"{at}.strands", "Give at least 1 strand.");
            if (!RequestCheck.Knows(request, run.YarnId)) return RequestCheck.UnknownYarn(request, run.YarnId, $"{at}.yarn");
            if (run.ClaspedWith is not { } other) continue;
            if (!RequestCheck.Knows(request, other)) return RequestCheck.UnknownYarn(request, other, $"{at}.claspedWith");
            if (run.ClaspShare is not (> 0 and < 1))
            {
                return new InputProblem($"A clasp at {run.ClaspShare * 100:0.##} % of the width leaves one yarn out.", $"{at}.claspShare", "Give a share above 0 and below 100 %, for example 50 %.");
            }
        }

        return null;
    }
}
