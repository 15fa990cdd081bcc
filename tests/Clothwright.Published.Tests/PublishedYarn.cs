using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests;

/// <summary>Yarns as tables name them.</summary>
internal static class PublishedYarn
{
    /// <summary>A yarn by fibre and count, for example cotton and 8/2.</summary>
    public static Yarn Of(string fibre, CountSystem system, string count, YarnConstruction construction = YarnConstruction.Spun) =>
        OfTex(fibre, YarnCount.Parse(count, system).Value.Tex, construction) with { Name = $"{count} {fibre}" };

    /// <summary>A yarn by fibre and tex.</summary>
    public static Yarn OfTex(string fibre, double tex, YarnConstruction construction = YarnConstruction.Spun) => new(
        $"{fibre}-{tex}",
        $"{fibre}, {tex} tex",
        Derived.Decision("mass per length", LinearDensity.FromTex(tex)),
        FibreBlend.Pure(FibreCatalogue.Get(fibre)),
        construction,
        new SrgbColour(200, 190, 170));

    /// <summary>The yarn with a diameter given in millimetres.</summary>
    public static Yarn WithDiameter(this Yarn yarn, double millimetres) => yarn with
    {
        MeasuredWraps = Derived.Decision("wraps", Sett.FromPerMetre(1000 / millimetres)),
        WrapMeasure = WrapMeasure.Geometric,
    };
}
