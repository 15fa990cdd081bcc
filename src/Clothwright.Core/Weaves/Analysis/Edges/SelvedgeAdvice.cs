using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>How to get edges that hold: the starting side, one end more or less, or a floating selvedge.</summary>
/// <param name="Options">Every starting side and change of one end, fewest missed turns first; of equals, the smaller change and the left first.</param>
public sealed record SelvedgeAdvice(ImmutableArray<SelvedgeOption> Options)
{
    /// <summary>The best arrangement.</summary>
    public SelvedgeOption Best => Options[0];

    /// <summary>No arrangement catches every turn: a floating selvedge is needed, or edge ends threaded to plain weave.</summary>
    public bool NeedsFloatingSelvedge => !Best.Report.IsClean;

    /// <summary>The advice as a sentence.</summary>
    public string Text
    {
        get
        {
            if (NeedsFloatingSelvedge)
            {
                return "No starting side catches the edge at every turn, nor does one end more or less: hang a floating selvedge at each side"
                    + " (over it on entering, under it on leaving), or thread the edge ends to plain weave.";
            }

            string side = Best.Start == ClothSide.Left ? "left" : "right";
            string change = Best.Change == EdgeChange.None ? "" : $" and {EdgeChanges.Text(Best.Change)}";
            return $"Start the shuttle from the {side}{change}: every turn then catches its edge end.";
        }
    }

    /// <summary>Tries both starting sides and one end more or less.</summary>
    /// <param name="cloth">The drawdown at its full width.</param>
    /// <param name="shuttles">Which shuttle throws each pick; one for all if left out.</param>
    /// <param name="repeatEnds">Ends of one repeat of the threading, from which an added end is taken; the width of the cloth if 0.</param>
    public static SelvedgeAdvice For(Drawdown cloth, ThreadOrder? shuttles = null, int repeatEnds = 0)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        var options =
            from change in Enum.GetValues<EdgeChange>()
            let changed = EdgeChanges.Changed(cloth, change, repeatEnds)
            from start in Enum.GetValues<ClothSide>()
            let report = SelvedgeReport.Of(changed, start, shuttles)
            select new SelvedgeOption(start, change, report);
        return new SelvedgeAdvice([.. options.OrderBy(o => o.Report.Missed.Length).ThenBy(o => o.Change != EdgeChange.None)]);
    }
}
