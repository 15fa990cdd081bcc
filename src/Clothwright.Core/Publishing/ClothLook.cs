using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Publishing;

/// <summary>All that is needed to picture a cloth thread by thread at true size.</summary>
/// <param name="Weave">Which thread is on top; repeated both ways to fill the picture.</param>
/// <param name="Ends">Looks of the ends from end 1, taken round again; at least one.</param>
/// <param name="Picks">Looks of the picks from pick 1, taken round again; at least one.</param>
/// <param name="EndSett">Ends per width in the finished cloth, all ends counted.</param>
/// <param name="PickSett">Picks per length in the finished cloth, all picks counted.</param>
public sealed partial record ClothLook(
    Drawdown Weave,
    ImmutableArray<ThreadLook> Ends,
    ImmutableArray<ThreadLook> Picks,
    Sett EndSett,
    Sett PickSett)
{
    /// <summary>Width of the finished cloth; null if the picture may be of any width.</summary>
    public Length? Width { get; init; }
}
