using System.Runtime.Intrinsics.Wasm;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Follows lines side by side from the first thread crossed to the last.</summary>
internal abstract class LaneFollower
{
    /// <summary>Words of lanes followed at once.</summary>
    public abstract int Words { get; }

    /// <summary>Runs up to this length are counted side by side.</summary>
    public abstract int Longest { get; }

    /// <summary>The follower that suits the machine: in a browser narrow vectors whose bits it counts itself, elsewhere the widest.</summary>
    public static LaneFollower ForThisMachine() => PackedSimd.IsSupported ? new NarrowFollower() : new WideFollower();

    /// <summary>Follows a few words; what is still open at the last thread is left in the scan.</summary>
    /// <param name="scan">The scan; begins after <see cref="FloatScan.Before"/>.</param>
    /// <param name="word">First word.</param>
    /// <param name="words">Words that hold lanes, at most <see cref="Words"/>.</param>
    public abstract void Follow(FloatScan scan, int word, int words);
}
