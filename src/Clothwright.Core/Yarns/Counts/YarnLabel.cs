using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Length and mass as printed on a band or cone, for example <c>400 m / 100 g</c>.</summary>
/// <param name="Length">The printed length; above 0.</param>
/// <param name="Mass">The printed mass; above 0.</param>
public sealed record YarnLabel(Length Length, Mass Mass)
{
    private const string Mend = "Write the length and the mass, for example 400 m / 100 g, 436 yd / 4 oz or 1450 yd/lb.";

    private static readonly Rule LabelRule = new("label, length and mass", "tex = 1000 × grams / metres × true to count", Source.Definition);

    /// <summary>Nominal tex.</summary>
    public double Tex => Mass.Grams * 1000 / Length.Metres;

    /// <summary>Reads <c>400 m / 100 g</c>, <c>400m/100g</c>, <c>436 yd per 4 oz</c>, <c>50 g = 109 yd</c>, <c>1450 yd/lb</c>.</summary>
    /// <param name="text">What is printed on the label.</param>
    /// <param name="where">Field path for a problem.</param>
    public static Parsed<YarnLabel> Parse(string text, string where = "label")
    {
        var cursor = new TextCursor(text, where);
        if (cursor.IsTooLong) return cursor.Problem($"{cursor.Quoted()} is too long to be a label.", Mend, 0);
        bool massFirst = StartsWithMass(cursor);
        Parsed<double> first = MeasureReader.Read(cursor, massFirst ? MassText.Units : LengthText.Units);
        if (!first.TryGet(out double one)) return first.Problem! with { Mend = Mend };
        if (!cursor.TryTake('/', '=', ':') && !cursor.TryTakeWord("per") && !cursor.TryTakeWord("in"))
        {
            return cursor.Problem($"The label {cursor.Quoted()} gives a {(massFirst ? "mass without a length" : "length without a mass")}.", Mend);
        }

        Parsed<double> second = ReadSecond(cursor, massFirst ? LengthText.Units : MassText.Units);
        if (!second.TryGet(out double two)) return second.Problem! with { Mend = Mend };
        if (!cursor.AtEnd) return cursor.Problem($"The label {cursor.Quoted()} is followed by something that is not part of it.", Mend);
        (double metres, double kilograms) = massFirst ? (two, one) : (one, two);
        if (metres == 0 || kilograms == 0) return cursor.Problem($"The label {cursor.Quoted()} has a 0: neither length nor mass of a yarn can be nothing.", Mend, 0);
        double tex = kilograms * 1e6 / metres;
        return double.IsFinite(tex) && tex > 0
            ? new YarnLabel(Length.FromMetres(metres), Mass.FromKilograms(kilograms))
            : cursor.Problem($"The label {cursor.Quoted()} is out of all bounds.", Mend, 0);
    }

    /// <summary>Mass per length of the yarn as labelled, with the spread that yarn as sold shows about its label.</summary>
    public Derived<LinearDensity> ToLinearDensity() => Derived.From<LinearDensity>(
        $"mass per length of {this}",
        LabelRule,
        Derived.Decision("mass on the label", Mass),
        Derived.Decision("length on the label", Length),
        CountTolerance.OfLabel(ToString()),
        (kilograms, metres, factor) => kilograms * 1e6 / metres * factor);

    /// <summary>The label in metric units; <see cref="Parse"/> reads it back.</summary>
    public override string ToString() => $"{Digits(Length.Metres)} m / {Digits(Mass.Grams)} g";

    private static string Digits(double value) => value.ToString("0.############", CultureInfo.InvariantCulture);

    private static bool StartsWithMass(TextCursor cursor)
    {
        int back = cursor.AtEnd ? cursor.Text.Length : cursor.Position;
        cursor.TryTakeNumber(out _);
        while (cursor.TryTake('/') || cursor.TryTakeNumber(out _))
        {
        }

        string unit = cursor.TakeWord().TrimEnd('.').ToLowerInvariant();
        cursor.Position = back;
        return MassText.Units.FactorByWord.ContainsKey(unit);
    }

    // "yd/lb" stands for one pound.
    private static Parsed<double> ReadSecond(TextCursor cursor, MeasureUnits units)
    {
        if (char.IsAsciiDigit(cursor.Next)) return MeasureReader.Read(cursor, units);
        int at = cursor.AtEnd ? cursor.Text.Length : cursor.Position;
        string unit = cursor.TakeWord();
        return units.FactorByWord.TryGetValue(unit.TrimEnd('.').ToLowerInvariant(), out double factor)
            ? factor
            : cursor.Problem($"The label {cursor.Quoted()} gives no {units.Noun} after the stroke.", Mend, at);
    }
}
