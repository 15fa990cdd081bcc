namespace Clothwright.Core.Quantities;

/// <summary>Reads a length that a person typed.</summary>
public static class LengthText
{
    private const double MetresPerFoot = 12 * Length.MetresPerInch;

    internal static MeasureUnits Units { get; } = new("length", "12 cm, 10 m, 12 in or 1.5 yd", new Dictionary<string, double>(StringComparer.Ordinal)
    {
        ["mm"] = 0.001,
        ["cm"] = 0.01,
        ["m"] = 1,
        ["in"] = Length.MetresPerInch,
        ["ft"] = MetresPerFoot,
        ["yd"] = Length.MetresPerYard,
        ["km"] = 1000,
        ["millimetre"] = 0.001,
        ["millimetres"] = 0.001,
        ["centimetre"] = 0.01,
        ["centimetres"] = 0.01,
        ["metre"] = 1,
        ["metres"] = 1,
        ["meter"] = 1,
        ["meters"] = 1,
        ["inch"] = Length.MetresPerInch,
        ["inches"] = Length.MetresPerInch,
        ["\""] = Length.MetresPerInch,
        ["″"] = Length.MetresPerInch,
        ["foot"] = MetresPerFoot,
        ["feet"] = MetresPerFoot,
        ["'"] = MetresPerFoot,
        ["′"] = MetresPerFoot,
        ["yds"] = Length.MetresPerYard,
        ["yard"] = Length.MetresPerYard,
        ["yards"] = Length.MetresPerYard,
        ["zoll"] = Length.MetresPerInch,
    });

    /// <summary>Reads <c>10m</c>, <c>10 m</c>, <c>12in</c>, <c>12 in</c>, <c>1.5 yd</c>, <c>1 1/2 in</c>, <c>1 yd 4 in</c>.</summary>
    /// <param name="text">What was typed; a bare 0 needs no unit.</param>
    /// <param name="where">Field path for a problem.</param>
    /// <returns>The length, or the problem with its position in <paramref name="text"/>.</returns>
    public static Parsed<Length> Parse(string text, string where = "length")
    {
        Parsed<double> metres = MeasureReader.ReadAll(text, where, Units);
        return metres.TryGet(out double value) ? Length.FromMetres(value) : metres.Problem!;
    }
}
