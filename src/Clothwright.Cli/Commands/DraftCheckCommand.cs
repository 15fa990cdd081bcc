using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright draft check</c>: does it hang together, how long are its floats, do its edges hold.</summary>
internal sealed class DraftCheckCommand : ReportCommand
{
    private readonly Argument<string> _draft = new("draft") { Description = "File, weave by name, or draft in notation." };

    /// <summary>The command.</summary>
    public DraftCheckCommand()
        : base("check", "Does the cloth hang together, how long are its floats, do its edges hold?") => Arguments.Add(_draft);

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        WovenDraft woven = WeaveSource.Read(input.GetValue(_draft)!, "draft", out IReadOnlyList<string> warnings);
        var cloth = ClothAnalysis.Of(woven.Draft);
        return new Report(Text(cloth, warnings), Json(cloth, warnings)) { ExitCode = cloth.Problems.IsEmpty ? ExitCode.Done : ExitCode.CheckFailed };
    }

    private static string Text(ClothAnalysis cloth, IReadOnlyList<string> warnings)
    {
        var text = new StringBuilder();
        string name = cloth.Draft?.Name is { Length: > 0 } given ? given + ": " : "";
        text.AppendLine($"{name}{cloth.Ends} ends, {cloth.Picks} picks, {cloth.Draft!.Shafts} shafts, {cloth.Draft.Treadles} treadles");
        text.AppendLine(Layers(cloth));
        foreach (FloatTally floats in cloth.Floats.All)
        {
            if (floats.Longest is { } longest) text.AppendLine($"Longest {longest}");
        }

        text.AppendLine(cloth.TabbySheds is { } tabby ? $"Plain weave: shafts {tabby.OddEnds} against {tabby.EvenEnds}" : "Plain weave: not on this threading");
        text.AppendLine($"Warp covers {cloth.WarpFaceFraction * 100:0} % of the face; fewest shafts {cloth.FewestShafts}, fewest treadles {cloth.FewestTreadles}");
        text.AppendLine("Heddles: " + string.Join(", ", cloth.EndsPerShaft!.Counts.Select((n, i) => $"shaft {i + 1} {n}")));
        foreach (string note in cloth.Notes) text.AppendLine(note);
        foreach (string warning in warnings) text.AppendLine("In the file: " + warning);
        foreach (var problem in cloth.Problems) text.AppendLine($"Fault: {problem}");
        return text.ToString().TrimEnd();
    }

    private static string Layers(ClothAnalysis cloth) => cloth.Layers switch
    {
        { HangsTogether: true } => "It hangs together.",
        { Layers.Length: > 1 } layers => $"{layers.Layers.Length} layers: {string.Join("; ", layers.Layers)}",
        _ => "It falls apart.",
    };

    private static JsonObject Json(ClothAnalysis cloth, IReadOnlyList<string> warnings) => new()
    {
        ["ends"] = cloth.Ends,
        ["picks"] = cloth.Picks,
        ["shafts"] = cloth.Draft!.Shafts,
        ["treadles"] = cloth.Draft.Treadles,
        ["maxWarpFloat"] = new JsonObject { ["face"] = Longest(cloth.Floats.WarpFace), ["back"] = Longest(cloth.Floats.WarpBack) },
        ["maxWeftFloat"] = new JsonObject { ["face"] = Longest(cloth.Floats.WeftFace), ["back"] = Longest(cloth.Floats.WeftBack) },
        ["hangsTogether"] = cloth.Layers.HangsTogether,
        ["layers"] = cloth.Layers.Layers.Length,
        ["components"] = new JsonArray([.. cloth.Layers.Components.Select(Component)]),
        ["tabbyAvailable"] = cloth.TabbyAvailable,
        ["looseSelvedgePicks"] = Numbers(cloth.SelvedgeFromLeft.LoosePicks.Select(p => p + 1)),
        ["endsPerShaft"] = Numbers(cloth.EndsPerShaft!.Counts),
        ["warpFaceFraction"] = cloth.WarpFaceFraction,
        ["fewestShafts"] = cloth.FewestShafts,
        ["fewestTreadles"] = cloth.FewestTreadles,
        ["repeatEnds"] = cloth.Repeat.Ends,
        ["repeatPicks"] = cloth.Repeat.Picks,
        ["drawdown"] = DraftText.Rows(cloth.Drawdown),
        ["problems"] = new JsonArray([.. cloth.Problems.Select(p => new JsonObject { ["what"] = p.What, ["where"] = p.Where, ["mend"] = p.Mend })]),
        ["notes"] = new JsonArray([.. cloth.Notes.Select(n => (JsonNode)n)]),
        ["fileWarnings"] = new JsonArray([.. warnings.Select(w => (JsonNode)w)]),
    };

    // Threads are numbered from 1 for people and programs alike; an endless float has no length.
    private static JsonObject? Longest(FloatTally floats) => floats.Longest is not { } longest ? null : new JsonObject
    {
        ["length"] = longest.Endless ? null : longest.Length,
        ["endless"] = longest.Endless,
        [longest.IsWarp ? "end" : "pick"] = longest.Line + 1,
        [longest.IsWarp ? "fromPick" : "fromEnd"] = longest.Start + 1,
    };

    private static JsonObject Component(ClothLayer layer) => new()
    {
        ["ends"] = Numbers(layer.Ends.Select(e => e + 1)),
        ["picks"] = Numbers(layer.Picks.Select(p => p + 1)),
    };

    private static JsonArray Numbers(IEnumerable<int> numbers) => [.. numbers.Select(n => (JsonNode)n)];
}
