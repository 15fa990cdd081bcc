using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> Satins()
    {
        WeaveParameter face = WeaveParameter.Choice("face", "which threads cover the face", "warp", "weft");
        return
        [
            new("satin", "satins", "One binding point on each pick, spread evenly so that none shows.", ["sateen", "satin weave"],
                [
                    WeaveParameter.Number("ends", "ends in the repeat", 5, 4, ShaftSet.Highest),
                    WeaveParameter.Number("step", "ends by which the binding point moves from pick to pick", null, 2, ShaftSet.Highest - 2),
                    face,
                ],
                c => Satin.Of(c.Number("ends"), c.NumberOrNone("step"), FaceOf(c)))
            { ImpliedBy = name => name == "sateen" ? ("face", "weft") : null },
            new("irregular satin", "satins", "Binding points scattered where no even step exists, above all on 6 ends.", ["irregular sateen"],
                [
                    WeaveParameter.Number("ends", "ends in the repeat", 6, 5, 16),
                    WeaveParameter.Numbers("order", "the end that binds on each pick, each once", "", 1, ShaftSet.Highest),
                    face,
                ],
                c => c.IsGiven("order") ? IrregularSatin.Of(c.Numbers("order"), FaceOf(c)) : IrregularSatin.On(c.Number("ends"), FaceOf(c)))
            { ImpliedBy = name => name == "irregular sateen" ? ("face", "weft") : null },
        ];
    }

    private static SatinFace FaceOf(WeaveChoices choices) => choices.Choice("face") == "weft" ? SatinFace.Weft : SatinFace.Warp;
}
