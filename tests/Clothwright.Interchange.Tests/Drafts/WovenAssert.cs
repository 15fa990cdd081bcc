using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Tests.Drafts;

/// <summary>Two drafts with their threads are the same in every part.</summary>
internal static class WovenAssert
{
    public static void Same(WovenDraft expected, WovenDraft actual)
    {
        Draft left = expected.Draft;
        Draft right = actual.Draft;
        Assert.Equal(left.Name, right.Name);
        Assert.Equal(left.Shafts, right.Shafts);
        Assert.Equal(left.RisingShed, right.RisingShed);
        Assert.Equal(left.Threading.AsEnumerable(), right.Threading);
        Assert.Equal(left.TieUp.AsEnumerable(), right.TieUp);
        Assert.Equal(left.Treadling.AsEnumerable(), right.Treadling);
        Assert.Equal(left.LiftPlan.AsEnumerable(), right.LiftPlan);
        Same(expected.Warp, actual.Warp);
        Same(expected.Weft, actual.Weft);
    }

    private static void Same(WovenThreads expected, WovenThreads actual)
    {
        Assert.Equal(expected.Colours.AsEnumerable(), actual.Colours);
        Same(expected.Spacings, actual.Spacings);
        Same(expected.Thicknesses, actual.Thicknesses);
    }

    // Metres turn into centimetres or millimetres and back: one part in 10^14 is the rounding of three multiplications.
    private static void Same(IReadOnlyList<Length> expected, IReadOnlyList<Length> actual)
    {
        Assert.Equal(expected.Count, actual.Count);
        for (int i = 0; i < expected.Count; i++) Assert.Equal(expected[i].Metres, actual[i].Metres, expected[i].Metres * 1e-14);
    }
}
