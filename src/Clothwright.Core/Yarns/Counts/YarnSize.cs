using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Reads a yarn's thickness however it is written: a label, a count that names its system, or a count in a given system.</summary>
public static class YarnSize
{
    /// <summary>Mass per length from a label or a count.</summary>
    /// <param name="text">For example <c>400 m / 100 g</c>, <c>Nm 28/2</c>, <c>8/2</c>.</param>
    /// <param name="system">System of a count; null where the text has to say it.</param>
    /// <param name="where">Field path for a problem.</param>
    /// <returns>The mass per length; a count without system is a problem that lists all its readings.</returns>
    public static Parsed<Derived<LinearDensity>> Parse(string text, CountSystem? system = null, string where = "yarn")
    {
        Parsed<YarnLabel> label = YarnLabel.Parse(text, where);
        if (label.TryGet(out YarnLabel? printed)) return printed.ToLinearDensity();
        if (system is { } given)
        {
            Parsed<YarnCount> count = YarnCount.Parse(text, given, where);
            return count.TryGet(out YarnCount? read) ? read.ToLinearDensity() : count.Problem!;
        }

        ImmutableArray<YarnCount> readings = YarnCount.Readings(text);
        if (readings.Length == 1) return readings[0].ToLinearDensity();
        if (readings.Length > 1) return Ambiguous(text, readings, where);
        Parsed<CountWords> words = CountText.Read(text, where);
        return words.Succeeded ? NoReading(text, where) : LooksLikeLabel(text) ? label.Problem! : words.Problem;
    }

    private static InputProblem Ambiguous(string text, ImmutableArray<YarnCount> readings, string where) => new(
        $"{TextCursor.Quote(text)} does not say its count system: {string.Join("; ", readings.Select(Describe))}.",
        where,
        $"Say which system, for example {text.Trim()} in {readings[0].System.Definition().Name}, or give length and mass from the label.")
    {
        Text = text,
        Position = 0,
    };

    private static InputProblem NoReading(string text, string where) => new(
        $"{TextCursor.Quote(text)} fits no count system that yarns for weaving are sold in.",
        where,
        "Name the system, for example 8/2 cotton, or give length and mass from the label.")
    {
        Text = text,
        Position = 0,
    };

    private static string Describe(YarnCount count) =>
        $"in {count.System.Definition().Name} {LinearDensity.FromTex(count.Tex).YardsPerPound:0} yd/lb ({LinearDensity.FromTex(count.Tex).MetresPerKilogram:0} m/kg)";

    private static bool LooksLikeLabel(string text) => text.Contains('/', StringComparison.Ordinal) && text.Any(char.IsLetter);
}
