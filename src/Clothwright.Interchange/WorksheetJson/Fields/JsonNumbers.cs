using System.Text.Json;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.WorksheetJson.Fields;

/// <summary>Writes numbers so that reading and writing again gives the same text, in the unit in which the number is rounder.</summary>
internal static class JsonNumbers
{
    // Twelve decimals lie within what a double carries for every quantity of a worksheet.
    private const int Decimals = 12;

    /// <summary>Writes a plain number.</summary>
    public static void Number(this Utf8JsonWriter writer, string field, double value) => writer.WriteNumber(field, Tidy(value));

    /// <summary>Writes a length as <c>nameCentimetres</c>, or as <c>nameInches</c> where that is the rounder number.</summary>
    public static void Length(this Utf8JsonWriter writer, string name, Length length)
    {
        if (IsRounder(length.Inches, length.Centimetres)) writer.Number(name + "Inches", length.Inches);
        else writer.Number(name + "Centimetres", length.Centimetres);
    }

    /// <summary>Writes a length unless it is nothing.</summary>
    public static void LengthUnlessZero(this Utf8JsonWriter writer, string name, Length length)
    {
        if (length.Metres > 0) writer.Length(name, length);
    }

    /// <summary>Writes threads per width as <c>endsPerCentimetre</c>, or per inch where that is the rounder number.</summary>
    public static void Threads(this Utf8JsonWriter writer, string threads, Sett sett)
    {
        if (IsRounder(sett.PerInch, sett.PerCentimetre)) writer.Number(threads + "PerInch", sett.PerInch);
        else writer.Number(threads + "PerCentimetre", sett.PerCentimetre);
    }

    /// <summary>Writes a share in hundredths, if there is one.</summary>
    public static void Percent(this Utf8JsonWriter writer, string name, Ratio? share)
    {
        if (share is { } known) writer.Number(name + "Percent", known.Percent);
    }

    /// <summary>A number without the dust of binary fractions.</summary>
    public static double Tidy(double value) => Math.Round(value, Decimals);

    private static bool IsRounder(double candidate, double usual) => IsRound(candidate) && !IsRound(usual);

    // Weavers measure in eighths and in tenths.
    private static bool IsRound(double value) =>
        Math.Abs(value * 40 - Math.Round(value * 40)) < 1e-9 * Math.Max(1, Math.Abs(value));
}
