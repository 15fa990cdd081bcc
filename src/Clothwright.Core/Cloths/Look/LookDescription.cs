using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Cloths.Look;

/// <summary>All that is needed to picture a cloth thread by thread at true size, on paper or on a screen.</summary>
/// <param name="Weave">Which thread is on top; repeated both ways to fill the picture.</param>
/// <param name="Ends">Looks of the ends from end 1, taken round again; at least one.</param>
/// <param name="Picks">Looks of the picks from pick 1, taken round again; at least one.</param>
/// <param name="EndSett">Ends per width of the cloth, all ends counted.</param>
/// <param name="PickSett">Picks per length of the cloth, all picks counted.</param>
public sealed partial record LookDescription(
    Drawdown Weave,
    ImmutableArray<ThreadLook> Ends,
    ImmutableArray<ThreadLook> Picks,
    Sett EndSett,
    Sett PickSett)
{
    /// <summary>Width of the cloth; null if the picture may be of any width.</summary>
    public Length? Width { get; init; }

    /// <summary>Length of the cloth; null if the picture may be of any length.</summary>
    public Length? Length { get; init; }

    /// <summary>Whether each end shares the place of the one before it, as a supplementary end or the end of a lower layer does; taken round again, empty where none does.</summary>
    public ImmutableArray<bool> SharedEnds { get; init; } = [];

    /// <summary>Whether each pick shares the place of the one before it; taken round again, empty where none does.</summary>
    public ImmutableArray<bool> SharedPicks { get; init; } = [];

    /// <summary>Crimp height of the warp as a share of both systems' thickness, 0 to 1; the weft has the rest.</summary>
    public double WarpRise { get; init; } = 0.5;

    /// <summary>Yarn in a length of cloth, warp: 1 + crimp. It sets how fast the colours of a variegated warp follow each other.</summary>
    public double WarpYarnPerLength { get; init; } = 1;

    /// <summary>Yarn in a width of cloth, weft: 1 + crimp.</summary>
    public double WeftYarnPerLength { get; init; } = 1;
}
