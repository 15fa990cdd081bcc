using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Worksheets;

public sealed partial record Worksheet
{
    /// <summary>The worksheet with another weave: pieces get a yarn for its pattern picks, or need none any more, as the weave asks.</summary>
    /// <param name="weave">The weave.</param>
    /// <remarks>The pattern is laid in the first yarn of the shelf that the ground of the piece has not, to be chosen otherwise; a piece with a weave of its own stays as it is.</remarks>
    public Worksheet Woven(WeaveDecision weave)
    {
        ArgumentNullException.ThrowIfNull(weave);
        Worksheet woven = this with { Weave = weave };
        if (!weave.Resolve().TryGet(out Weave? read)) return woven;
        return woven with { Pieces = [.. Pieces.Select(p => p.Weave is null ? p with { Piece = Patterned(p.Piece, read.HasPatternPicks) } : p)] };
    }

    private Piece Patterned(Piece piece, bool patterned)
    {
        bool has = !piece.PatternWeft.IsDefaultOrEmpty;
        if (has == patterned) return piece;
        if (!patterned) return piece with { PatternWeft = [] };
        string other = Shelf.Select(y => y.Id).FirstOrDefault(id => piece.Weft.All(w => w.YarnId != id)) ?? piece.Weft[0].YarnId;
        return piece with { PatternWeft = [new WeftRun(other, 1)] };
    }
}
