namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>Makes the change of one end at an edge.</summary>
public static class EdgeChanges
{
    /// <summary>The cloth with one end more or less.</summary>
    /// <param name="cloth">The drawdown at its full width.</param>
    /// <param name="change">The change.</param>
    /// <param name="repeatEnds">Ends of one repeat of the threading, from which an added end is taken; the width of the cloth if 0.</param>
    /// <returns>The changed cloth; the same if its only end would go.</returns>
    public static Drawdown Changed(Drawdown cloth, EdgeChange change, int repeatEnds = 0)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        int repeat = repeatEnds == 0 ? cloth.Ends : Math.Min(repeatEnds, cloth.Ends);
        return change switch
        {
            EdgeChange.DropFirst when cloth.Ends > 1 => cloth.Piece(1, cloth.Ends - 1, 0, cloth.Picks),
            EdgeChange.DropLast when cloth.Ends > 1 => cloth.Piece(0, cloth.Ends - 1, 0, cloth.Picks),
            EdgeChange.AddLast => Drawdown.From(cloth.Ends + 1, cloth.Picks, (pick, end) => cloth[pick, end < cloth.Ends ? end : end % repeat]),
            _ => cloth,
        };
    }

    /// <summary>The change as an instruction; empty for none.</summary>
    /// <param name="change">The change.</param>
    public static string Text(EdgeChange change) => change switch
    {
        EdgeChange.DropFirst => "leave out the first end",
        EdgeChange.DropLast => "leave out the last end",
        EdgeChange.AddLast => "add one end at the right",
        _ => "",
    };
}
