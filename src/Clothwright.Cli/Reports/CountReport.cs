using System.Text.Json.Nodes;
using Clothwright.Core.Photographs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Cli.Reports;

/// <summary>What was read from a photograph, for a person and for a program.</summary>
internal static class CountReport
{
    private const int Column = 8;

    /// <summary>Ends and picks.</summary>
    public static Report Of(ClothCount count, UnitStyle units) => new(
        string.Join('\n', Set("Ends", count.Ends, units), Set("Picks", count.Picks, units), "", Advice(count.Certainty)),
        new JsonObject
        {
            ["endsPerCentimetre"] = count.Ends.Sett.Value.PerCentimetre,
            ["picksPerCentimetre"] = count.Picks.Sett.Value.PerCentimetre,
            ["angleDegrees"] = new JsonObject { ["ends"] = count.Ends.AngleDegrees, ["picks"] = count.Picks.AngleDegrees },
            ["sure"] = CountWords.Of(count.Certainty),
            ["spread"] = Spread(count.Ends, count.Picks),
            ["questions"] = new JsonArray([.. Questions("ends", count.Ends), .. Questions("picks", count.Picks)]),
            ["ends"] = Json(count.Ends),
            ["picks"] = Json(count.Picks),
        });

    /// <summary>Wraps on a rod.</summary>
    public static Report Of(WrapCount count, UnitStyle units)
    {
        string text = $"{"Wraps",-Column}{count.Wraps.Working.Format(units)}; {CountWords.Of(count.Certainty)}, {count.WrapsSeen} wraps seen"
            + (count.Diameter is { } d ? $"\n{"Yarn",-Column}{d.Working.Format(units)} across, one wrap" : "\nThe wraps do not touch everywhere: no diameter is taken from them. Wind them side by side, not pulled tight.");
        foreach (CountQuestion question in count.Questions) text += $"\n{"",Column}{CountWords.Of(question, "wraps", units)}";
        return new Report(text, new JsonObject
        {
            ["wrapsPerCentimetre"] = count.Wraps.Value.PerCentimetre,
            ["wrapsPerInch"] = count.Wraps.Value.PerInch,
            ["diameterMillimetres"] = count.Diameter?.Value.Millimetres,
            ["touching"] = count.Touching,
            ["wrapsSeen"] = count.WrapsSeen,
            ["sure"] = CountWords.Of(count.Certainty),
            ["questions"] = new JsonArray([.. count.Questions.Select(q => (JsonNode)CountWords.Of(q, "wraps", UnitStyle.Metric))]),
            ["working"] = Clothwright.Interchange.Http.WorkingReport.Of(count.Wraps.Working),
        });
    }

    /// <summary>Size of a piece.</summary>
    public static Report Of(PieceSize size, UnitStyle units) => new(
        $"{"Width",-Column}{size.Width.Working.Format(units)} ± {Half(size.Width)}\n{"Length",-Column}{size.Length.Working.Format(units)} ± {Half(size.Length)}\n{Capital(CountWords.Of(size.Certainty))}: as pictured, from edge to edge without fringes.",
        new JsonObject
        {
            ["widthCentimetres"] = size.Width.Value.Centimetres,
            ["lengthCentimetres"] = size.Length.Value.Centimetres,
            ["widthDeviationMillimetres"] = size.Width.StandardDeviation * 1000,
            ["lengthDeviationMillimetres"] = size.Length.StandardDeviation * 1000,
            ["sure"] = CountWords.Of(size.Certainty),
        });

    private static string Half(Derived<Length> length) => $"{length.StandardDeviation * Core.Workings.Spread.UpperNinetyFive * 1000:0.0} mm";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Set(string name, ThreadSetCount set, UnitStyle units)
    {
        Working working = set.Sett.Working;
        string likely = $"{QuantityText.Format(working.Kind, working.Lower95, units)} to {QuantityText.Format(working.Kind, working.Upper95, units)}";
        string text = $"{name,-Column}{working.Format(units)} ({likely}); {CountWords.Of(set.Certainty)}, {set.ThreadsSeen} threads seen, turned {set.AngleDegrees:0.0}°";
        foreach (CountQuestion question in set.Questions) text += $"\n{"",Column}{CountWords.Of(question, name.ToLowerInvariant(), units)}";
        return text;
    }

    private static string Advice(Certainty certainty) => certainty switch
    {
        Certainty.Sure => "The warp is taken to run up the picture (--warp across if not).",
        Certainty.FairlySure => "Lay a needle along a few threads and compare; the warp is taken to run up the picture.",
        _ => "This photograph cannot tell. Take another: swatch flat, light from the side, camera square and still, a thread 6 to 20 pixels wide.",
    };

    private static JsonObject Spread(ThreadSetCount ends, ThreadSetCount picks) => new()
    {
        ["endsPerCentimetreDeviation"] = ends.Sett.StandardDeviation / 100,
        ["picksPerCentimetreDeviation"] = picks.Sett.StandardDeviation / 100,
        ["endsStripFraction"] = ends.SpreadFraction,
        ["picksStripFraction"] = picks.SpreadFraction,
    };

    private static JsonObject Json(ThreadSetCount set) => new()
    {
        ["perCentimetre"] = set.Sett.Value.PerCentimetre,
        ["perInch"] = set.Sett.Value.PerInch,
        ["sure"] = CountWords.Of(set.Certainty),
        ["threadsSeen"] = set.ThreadsSeen,
        ["marginFraction"] = set.Margin,
        ["working"] = Clothwright.Interchange.Http.WorkingReport.Of(set.Sett.Working),
    };

    private static IEnumerable<JsonNode> Questions(string name, ThreadSetCount set) => set.Questions.Select(q => new JsonObject
    {
        ["of"] = name,
        ["kind"] = char.ToLowerInvariant(q.Kind.ToString()[0]) + q.Kind.ToString()[1..],
        ["insteadPerCentimetre"] = q.Instead?.PerCentimetre,
        ["text"] = CountWords.Of(q, name, UnitStyle.Metric),
    });
}
