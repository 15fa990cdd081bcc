using System.Globalization;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Numbers and lists as a weaver reads them.</summary>
internal static class Words
{
    private static readonly string[] Small = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>A figure in metric units, customary units in brackets.</summary>
    public static string Both(IDerived figure) => Both(figure.Working.Kind, figure.Working.BaseValue);

    /// <summary>A length in metric units, customary units in brackets.</summary>
    public static string Both(Length length) => Both(QuantityKind.Length, length.Metres);

    /// <summary>A sett in metric units, customary units in brackets.</summary>
    public static string Both(Sett sett) => Both(QuantityKind.Sett, sett.PerMetre);

    /// <summary>A figure in metric units.</summary>
    public static string Metric(IDerived figure) => figure.Working.Format(UnitStyle.Metric);

    /// <summary>A whole number in digits.</summary>
    public static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A whole number in words up to twelve, then in digits.</summary>
    public static string Spelled(int number) => number >= 0 && number < Small.Length ? Small[number] : Count(number);

    /// <summary>A number of things, for example <c>1 pick</c>, <c>4 picks</c>.</summary>
    public static string Of(int number, string one, string? many = null) => $"{Count(number)} {(number == 1 ? one : many ?? one + "s")}";

    /// <summary>How often, for example <c>once</c>, <c>twice</c>, <c>9 times</c>.</summary>
    public static string Times(int times) => times switch
    {
        1 => "once",
        2 => "twice",
        _ => $"{Count(times)} times",
    };

    /// <summary>A list with commas and an "and" before the last.</summary>
    public static string List(IEnumerable<string> items)
    {
        string[] all = [.. items];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    /// <summary>The text with its first letter as a capital.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>What is counted on the loom: the picks, or of a cloth with a pattern weft those of its ground.</summary>
    public static string CountedPicks(PiecePlan piece) => piece.PatternPicksPerGroundPick > 0 ? "ground picks" : "picks";

    /// <summary>What follows picks counted in one layer of several; nothing for a single cloth.</summary>
    public static string EachLayer(PiecePlan piece) => piece.Piece.Make.Layers() > 1 ? " in each layer" : "";

    private static string Both(QuantityKind kind, double value)
    {
        string metric = QuantityText.Format(kind, value, UnitStyle.Metric);
        string customary = QuantityText.Format(kind, value, UnitStyle.Customary);
        return metric == customary ? metric : $"{metric} ({customary})";
    }
}
