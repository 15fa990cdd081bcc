using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Core.Cloths.Hand;

/// <summary>How long the longest floats lie in the cloth.</summary>
public static class FloatLengths
{
    /// <summary>A float longer than this catches in use: the rule for towels and garments.</summary>
    public static Length Catching { get; } = FloatRules.For(FloatPurpose.Garment).Longest;

    /// <summary>Longest float of warp and of weft on either face, as a length on the cloth, the repeat read endlessly.</summary>
    /// <param name="cloth">The cloth.</param>
    public static (Length Warp, Length Weft) Longest(ClothGeometry cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ClothFloats floats = ClothFloats.Of(cloth.Question.Weave, ClothReading.Repeat);
        int warp = Longest(floats.WarpFace, floats.WarpBack, cloth.Counts.Picks);
        int weft = Longest(floats.WeftFace, floats.WeftBack, cloth.Counts.Ends);
        return (cloth.Question.Picks.Value.Spacing * warp, cloth.Question.Ends.Value.Spacing * weft);
    }

    // An endless float counts as one repeat: it is at least as long.
    private static int Longest(FloatTally face, FloatTally back, int repeat) =>
        Math.Min(repeat, Math.Max(face.LongestLength, back.LongestLength));
}
