using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Yarns;

/// <summary>Yarns of the studio on the estuary, for tests.</summary>
internal static class EstuaryYarns
{
    public static Yarn Bamboo { get; } = Make("tide-blue", "8/2", CountSystem.Cotton, "bamboo");

    public static Yarn Merino { get; } = Make("samphire", "2/28", CountSystem.Metric, "merino");

    public static Yarn Linen { get; } = Make("driftwood", "16/2", CountSystem.Linen, "linen");

    public static Yarn Polyester { get; } = Make("glass-wrack", "150 den", CountSystem.Denier, "polyester");

    public static Yarn Make(string id, string count, CountSystem system, string fibres, YarnConstruction construction = YarnConstruction.Spun) => new(
        id,
        $"{count}, {id}",
        YarnCount.Parse(count, system).Value.ToLinearDensity(),
        FibreBlend.Parse(fibres).Value,
        construction,
        new SrgbColour(70, 110, 150));

    public static YarnPackage Cone(double grossGrams, double tareGrams = 30, double? humidityPercent = null, string? lot = null) =>
        new(PackageForm.Cone, Mass.FromGrams(grossGrams), Mass.FromGrams(tareGrams))
        {
            RelativeHumidity = humidityPercent is { } percent ? Ratio.FromPercent(percent) : null,
            Lot = lot,
        };

    /// <summary>Stock whose mass at the agreed regain is exactly a number of grams.</summary>
    public static StockLeft Stock(double grams, string? lot = null)
    {
        Derived<Mass> mass = Derived.Given("on the shelf", Mass.FromGrams(grams), Source.Measured);
        return new StockLeft(Cone(grams, 0, lot: lot), mass, mass, Derived.Given("length", Bamboo.LinearDensity.Value.LengthOf(mass.Value), Source.Measured));
    }
}
