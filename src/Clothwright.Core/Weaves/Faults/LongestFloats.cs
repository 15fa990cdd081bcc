using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Core.Weaves.Faults;

/// <summary>The longest floats of a finite piece of cloth, in threads passed over.</summary>
/// <param name="WarpFace">Ends over picks.</param>
/// <param name="WarpBack">Ends under picks.</param>
/// <param name="WeftFace">Picks over ends.</param>
/// <param name="WeftBack">Picks under ends.</param>
public readonly record struct LongestFloats(int WarpFace, int WarpBack, int WeftFace, int WeftBack)
{
    /// <summary>The longest floats of a cloth; floats stop at its edges.</summary>
    /// <param name="cloth">The cloth.</param>
    public static LongestFloats Of(Drawdown cloth)
    {
        var floats = ClothFloats.Of(cloth, ClothReading.Cut);
        return new LongestFloats(
            floats.WarpFace.LongestLength, floats.WarpBack.LongestLength, floats.WeftFace.LongestLength, floats.WeftBack.LongestLength);
    }
}
