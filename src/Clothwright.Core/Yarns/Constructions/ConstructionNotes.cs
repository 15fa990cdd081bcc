using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>What each way of making yarn means at the loom.</summary>
public static class ConstructionNotes
{
    // Below this stretch at break of the fibre an end that is a little shorter carries the whole load.
    private const double LittleStretch = 0.04;

    /// <summary>Every construction once.</summary>
    public static ImmutableArray<ConstructionNote> All { get; } = [.. EmbeddedTable.Rows("constructions.table.txt").Select(Read)];

    /// <summary>The note on one construction.</summary>
    /// <param name="construction">The construction.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not one of the constructions.</exception>
    public static ConstructionNote Of(YarnConstruction construction) => All.FirstOrDefault(n => n.Construction == construction)
        ?? throw new ArgumentOutOfRangeException(nameof(construction), construction, "This is not a construction of yarn.");

    /// <summary>Finds a construction by its name.</summary>
    /// <param name="text">For example <c>chenille</c>, <c>bouclé</c>, <c>singles</c>.</param>
    /// <param name="where">Field path for a problem.</param>
    public static Parsed<YarnConstruction> Parse(string text, string where = "construction")
    {
        ArgumentNullException.ThrowIfNull(text);
        string wanted = text.Trim();
        ConstructionNote? found = All.FirstOrDefault(n =>
            string.Equals(n.Construction.ToString(), wanted, StringComparison.OrdinalIgnoreCase) || string.Equals(n.Name, wanted, StringComparison.OrdinalIgnoreCase));
        return found is not null
            ? found.Construction
            : new InputProblem($"{TextCursor.Quote(text)} is not a way to make yarn.", where, $"Use one of {string.Join(", ", All.Select(n => n.Construction.ToString().ToLowerInvariant()))}.") { Text = text, Position = 0 };
    }

    /// <summary>What to mind when a yarn is used as warp: advice and warnings, never a refusal.</summary>
    /// <param name="yarn">The yarn.</param>
    /// <param name="heldWithAnother">Whether each end runs together with an end of another yarn.</param>
    public static ImmutableArray<YarnAdvice> AsWarp(Yarn yarn, bool heldWithAnother = false)
    {
        var advice = ImmutableArray.CreateBuilder<YarnAdvice>();
        bool carried = heldWithAnother && yarn.Construction == YarnConstruction.Monofilament;
        if (Of(yarn.Construction).AsWarp is { } construction && !carried) advice.Add(construction);
        if (yarn.Fibres.Elongation is { } stretch && stretch.Value.Value < LittleStretch)
        {
            advice.Add(new YarnAdvice(
                false,
                $"Its fibres stretch only {stretch.Value.Percent:0.#} % before they break, so a short end carries the load of its neighbours.",
                "Give every end the same tension, and damp the warp in dry air.",
                stretch.Working.Rule.Source));
        }

        return advice.ToImmutable();
    }

    private static ConstructionNote Read(ImmutableDictionary<string, string> row) => new(
        Enum.Parse<YarnConstruction>(row["construction"]),
        row["name"],
        row["what"],
        row["follows-count"] == "yes",
        row["sett"],
        row["weft"],
        row["warp"] == "none" ? null : new YarnAdvice(row["warp"] == "warning", row["says"], row["advice"], Source.CommonPractice));
}
