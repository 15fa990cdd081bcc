using System.Globalization;
using System.Text.Json;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.WorksheetJson.Fields;

internal sealed partial class JsonSection
{
    /// <summary>The longest length that a field takes, in centimetres: a kilometre.</summary>
    public const double LongestCentimetres = 100_000;

    // From the most open net to threads finer than any loom carries.
    private const double LeastThreadsPerCentimetre = 0.05;
    private const double MostThreadsPerCentimetre = 400;
    private const double CentimetresPerInch = 2.54;

    /// <summary>The fields in which a length can be written.</summary>
    public static string[] LengthFields(string name) => [name + "Centimetres", name + "Inches", name];

    /// <summary>The fields in which threads per width or length can be written.</summary>
    public static string[] ThreadFields(string threads) => [threads + "PerCentimetre", threads + "PerInch", threads];

    /// <summary>A length that has to be there.</summary>
    /// <param name="name">Its name without unit.</param>
    /// <param name="exampleCentimetres">A sensible value.</param>
    public Length Length(string name, double exampleCentimetres)
    {
        Length length = OptionalLength(name) ?? throw Missing(name, $"\"{name}Centimetres\": {exampleCentimetres.ToString(CultureInfo.InvariantCulture)}, or \"{name}\" with a unit");
        return length.Metres > 0 ? length : throw Problem(name, $"The {name} is 0.", $"Write for example \"{name}Centimetres\": {exampleCentimetres.ToString(CultureInfo.InvariantCulture)}.");
    }

    /// <summary>A length of 0 or more; null if it is not there.</summary>
    /// <param name="name">Its name without unit: the field <c>nameCentimetres</c> or <c>nameInches</c> holds a number, <c>name</c> a text with its unit.</param>
    public Length? OptionalLength(string name)
    {
        OnlyOne(LengthFields(name));
        if (OptionalNumber(name + "Centimetres", 0, LongestCentimetres) is { } centimetres) return Core.Quantities.Length.FromCentimetres(centimetres);
        if (OptionalNumber(name + "Inches", 0, LongestCentimetres / CentimetresPerInch) is { } inches) return Core.Quantities.Length.FromInches(inches);
        if (!TryGet(name, out JsonElement value)) return null;
        if (value.ValueKind == JsonValueKind.Number)
        {
            throw Problem(name, $"{Quote(value)} has no unit.", $"Write \"{name}Centimetres\": {Quote(value)}, or \"{name}\": \"{Quote(value)} cm\".");
        }

        Length length = Read(LengthText.Parse(TextOf(value, name), At(name)));
        return length.Centimetres <= LongestCentimetres
            ? length
            : throw Problem(name, $"{Quote(value)} is longer than a kilometre.", "Write for example \"180 cm\".");
    }

    /// <summary>Threads per width or length; null if it is not there.</summary>
    /// <param name="threads">What is counted, in the plural: the field <c>endsPerCentimetre</c> or <c>endsPerInch</c> holds a number, <c>ends</c> a text such as <c>20/in</c>.</param>
    public Sett? OptionalThreads(string threads)
    {
        OnlyOne(ThreadFields(threads));
        if (OptionalNumber(threads + "PerCentimetre", LeastThreadsPerCentimetre, MostThreadsPerCentimetre) is { } perCentimetre) return Sett.FromPerCentimetre(perCentimetre);
        if (OptionalNumber(threads + "PerInch", LeastThreadsPerCentimetre * CentimetresPerInch, MostThreadsPerCentimetre * CentimetresPerInch) is { } perInch) return Sett.FromPerInch(perInch);
        return TryGet(threads, out JsonElement value) ? Threads(TextOf(value, threads), threads) : null;
    }

    /// <summary>Threads per width or length written as text.</summary>
    public Sett Threads(string text, string field)
    {
        Sett sett = Read(SettText.Parse(text, At(field)));
        return sett.PerCentimetre is >= LeastThreadsPerCentimetre and <= MostThreadsPerCentimetre
            ? sett
            : throw Problem(field, $"\"{Shorten(text)}\" is no sett that can be woven.", $"Write {LeastThreadsPerCentimetre.ToString(CultureInfo.InvariantCulture)} to {MostThreadsPerCentimetre.ToString(CultureInfo.InvariantCulture)} per centimetre, for example \"8/cm\".");
    }

    /// <summary>A mass; null if it is not there.</summary>
    /// <param name="name">Its name without unit: the field <c>nameGrams</c> holds a number, <c>name</c> a text with its unit.</param>
    public Mass? OptionalMass(string name)
    {
        OnlyOne([name + "Grams", name]);
        if (OptionalNumber(name + "Grams", 0, 1e6) is { } grams) return Mass.FromGrams(grams);
        return TryGet(name, out JsonElement value) ? Read(MassText.Parse(TextOf(value, name), At(name))) : null;
    }

    /// <summary>What was read, or its problem thrown to the edge.</summary>
    public static T Read<T>(Parsed<T> parsed)
        where T : notnull => parsed.Value;

    private void OnlyOne(string[] fields)
    {
        string[] given = [.. fields.Where(Has)];
        if (given.Length > 1) throw Problem(given[1], $"\"{given[0]}\" and \"{given[1]}\" say the same thing twice.", $"Keep one of them, for example \"{given[0]}\".");
    }
}
