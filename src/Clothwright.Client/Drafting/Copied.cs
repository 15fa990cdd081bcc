using System.Collections.Immutable;
using Clothwright.Core.Weaves;

namespace Clothwright.Client.Drafting;

/// <summary>What was copied, to be put elsewhere.</summary>
/// <param name="Threads">Shafts or treadles of threads; empty if cloth or yarns were copied.</param>
/// <param name="Cloth">A piece of cloth; null if threads or yarns were copied.</param>
/// <param name="Yarns">Yarns by their ids; empty if threads or cloth were copied.</param>
internal sealed record Copied(ImmutableArray<ShaftSet> Threads, Drawdown? Cloth, ImmutableArray<string> Yarns)
{
    /// <summary>Whether it can be put into a part.</summary>
    public bool Fits(DeskPart part) => part switch
    {
        DeskPart.Cloth => Cloth is not null,
        DeskPart.WarpColours or DeskPart.WeftColours => !Yarns.IsEmpty,
        _ => !Threads.IsEmpty,
    };
}
