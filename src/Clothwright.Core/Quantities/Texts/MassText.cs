namespace Clothwright.Core.Quantities;

/// <summary>Reads a mass that a person typed.</summary>
public static class MassText
{
    private const double KilogramsPerOunce = Mass.KilogramsPerPound / 16;

    // 7000 grains and 256 drams to the pound avoirdupois. "gr" is not taken: some mean grains by it and some grams.
    internal static MeasureUnits Units { get; } = new("mass", "200 g, 4 oz or 1 lb", new Dictionary<string, double>(StringComparer.Ordinal)
    {
        ["mg"] = 1e-6,
        ["g"] = 0.001,
        ["kg"] = 1,
        ["oz"] = KilogramsPerOunce,
        ["lb"] = Mass.KilogramsPerPound,
        ["grain"] = Mass.KilogramsPerPound / 7000,
        ["grains"] = Mass.KilogramsPerPound / 7000,
        ["dram"] = Mass.KilogramsPerPound / 256,
        ["drams"] = Mass.KilogramsPerPound / 256,
        ["gram"] = 0.001,
        ["grams"] = 0.001,
        ["gramme"] = 0.001,
        ["grammes"] = 0.001,
        ["kilogram"] = 1,
        ["kilograms"] = 1,
        ["ounce"] = KilogramsPerOunce,
        ["ounces"] = KilogramsPerOunce,
        ["lbs"] = Mass.KilogramsPerPound,
        ["pound"] = Mass.KilogramsPerPound,
        ["pounds"] = Mass.KilogramsPerPound,
    });

    /// <summary>Reads <c>200 g</c>, <c>200g</c>, <c>4 oz</c>, <c>1 lb</c>, <c>2 lb 4 oz</c>, <c>1 3/4 oz</c>.</summary>
    /// <param name="text">What was typed; a bare 0 needs no unit.</param>
    /// <param name="where">Field path for a problem.</param>
    /// <returns>The mass, or the problem with its position in <paramref name="text"/>.</returns>
    public static Parsed<Mass> Parse(string text, string where = "mass")
    {
        Parsed<double> kilograms = MeasureReader.ReadAll(text, where, Units);
        return kilograms.TryGet(out double value) ? Mass.FromKilograms(value) : kilograms.Problem!;
    }
}
