using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Colours;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright sett</c>: how close to set a yarn in a weave for a purpose.</summary>
internal sealed class SettCommand : ReportCommand
{
    private const int ReedsShown = 6;

    private readonly Option<string> _yarn = new("--yarn") { Description = "Warp yarn: a count or a label, for example 8/2 or \"400 m / 100 g\".", Required = true };
    private readonly Option<string?> _system = new("--system") { Description = "Count system of --yarn (see yarn convert)." };
    private readonly Option<string> _fibre = new("--fibre") { Description = "Fibre, for example cotton, bamboo-viscose, merino, or a blend \"wool 80 %, silk 20 %\".", Required = true };
    private readonly Option<string?> _construction = new("--construction") { Description = "spun (if left out), singles, reeled, filament, chenille, ribbon, boucle or monofilament." };
    private readonly Option<string?> _wraps = new("--wraps") { Description = "Wraps touching on a ruler, for example 33/in; takes the place of the diameter by rule." };
    private readonly Option<string?> _weft = new("--weft") { Description = "Weft yarn where it is another; same fibre and system." };
    private readonly Option<string> _weave = new("--weave") { Description = "Weave by name, draft in notation, or file.", Required = true };
    private readonly Option<string> _purpose = new("--purpose") { Description = "airy, drape, everyday, firm, weft-faced or warp-faced.", DefaultValueFactory = _ => "everyday" };
    private readonly Option<string?> _reeds = new("--reeds") { Description = "Reeds she owns, for example 8,10,12 (dents per inch) or 40/10 (per 10 cm)." };
    private readonly Option<string?> _heddles = new("--heddles") { Description = "Rigid heddles she owns, for example 10,10 or 7.5,7.5,7.5." };

    /// <summary>The command.</summary>
    public SettCommand()
        : base("sett", "How close to set a yarn in a weave: limits by method, the sett for the purpose, reeds that give it.")
    {
        foreach (Option option in (Option[])[_yarn, _system, _fibre, _construction, _wraps, _weft, _weave, _purpose, _reeds, _heddles]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        CountSystem? system = SizeArgument.System(input.GetValue(_system));
        FibreBlend fibres = FibreBlend.Parse(input.GetValue(_fibre)!, "--fibre").Value;
        Yarn warp = YarnOf("warp", input.GetValue(_yarn)!, "--yarn") with
        {
            MeasuredWraps = input.GetValue(_wraps) is { } wraps
                ? Derived.Given("wraps measured", SettText.Parse(wraps, "--wraps").Value, Source.Measured)
                : null,
        };
        Yarn weft = input.GetValue(_weft) is { } text ? YarnOf("weft", text, "--weft") : warp;
        var advice = SettAdvice.For(SettQuestion.About(
            warp,
            WeaveSource.Read(input.GetValue(_weave)!, "--weave", out _).Draft.Drawdown(),
            ClothPurposeText.Parse(input.GetValue(_purpose)!).At("--purpose"),
            weft) with
        {
            Reeds = [.. Split(input.GetValue(_reeds)).Select(r => Reed.Parse(r).At("--reeds"))],
            Heddles = [.. Split(input.GetValue(_heddles)).GroupBy(h => h).Select(g => RigidHeddle.Parse(g.Key, g.Count()).At("--heddles"))],
        });
        return new Report(Text(advice), Json(advice));

        Yarn YarnOf(string id, string size, string where) => new(
            id,
            size,
            SizeArgument.Read(size, system, where),
            fibres,
            input.GetValue(_construction) is { } made ? ConstructionWord.Read(made, "--construction") : YarnConstruction.Spun,
            new SrgbColour(0xe9, 0xe1, 0xcf));
    }

    private static string[] Split(string? list) =>
        list?.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [];

    private static string Text(SettAdvice advice)
    {
        var text = new StringBuilder();
        text.AppendLine($"Set {advice.Ends.Value.PerInch:0.#} ends per inch ({advice.Ends.Value.PerCentimetre:0.0#} per cm), "
            + $"{advice.EndsRange.Low.PerInch:0.#} to {advice.EndsRange.High.PerInch:0.#} will serve; beat about {advice.Picks.Value.PerInch:0.#} picks per inch.");
        text.AppendLine($"Yarn diameter {advice.WarpDiameter.Working.Format()}; {advice.WarpWrapsByHand.Value.PerInch:0} wraps per inch by hand.");
        text.AppendLine("Closest this weave can be set:");
        foreach (SettLimit limit in advice.Limits)
        {
            WrappedText.Append(text, $"{limit.Method} ({limit.Ends.Working.Rule.Source})", $"  {limit.Ends.Value.PerInch,6:0.0} per inch  ", "                    ");
        }

        if (!advice.Reeds.IsEmpty) text.AppendLine("Reeds and heddles that give it, best first:");
        foreach (ReedFit reed in advice.Reeds.Take(ReedsShown))
        {
            text.AppendLine($"  {reed.Name,-12} sleyed {reed.Sley,-8} gives {reed.Sett.PerInch,5:0.0} per inch ({reed.Error.Percent:+0.0;-0.0} %)");
            foreach (string warning in reed.Warnings) WrappedText.Append(text, warning, "      ", "      ");
        }

        foreach (string note in advice.Notes) WrappedText.Append(text, note);
        return text.ToString().TrimEnd();
    }

    private static JsonObject Json(SettAdvice advice) => new()
    {
        ["diameterMillimetres"] = advice.WarpDiameter.Value.Millimetres,
        ["wrapsPerInch"] = advice.WarpTouching.Value.PerInch,
        ["wrapsPerInchByHand"] = advice.WarpWrapsByHand.Value.PerInch,
        ["maximumEndsPerCentimetre"] = advice.MaximumEnds.Value.PerCentimetre,
        ["recommendedEndsPerCentimetre"] = advice.Ends.Value.PerCentimetre,
        ["recommendedEndsPerInch"] = advice.Ends.Value.PerInch,
        ["recommendedPicksPerCentimetre"] = advice.Picks.Value.PerCentimetre,
        ["range"] = new JsonObject
        {
            ["lowEndsPerCentimetre"] = advice.EndsRange.Low.PerCentimetre,
            ["highEndsPerCentimetre"] = advice.EndsRange.High.PerCentimetre,
            ["lowEndsPerInch"] = advice.EndsRange.Low.PerInch,
            ["highEndsPerInch"] = advice.EndsRange.High.PerInch,
        },
        ["methods"] = new JsonArray([.. advice.Limits.Select(l => new JsonObject
        {
            ["name"] = l.Method,
            ["endsPerCentimetre"] = l.Ends.Value.PerCentimetre,
            ["picksPerCentimetre"] = l.Picks.Value.PerCentimetre,
            ["source"] = l.Ends.Working.Rule.Source.Name,
            ["note"] = l.Note,
        })]),
        ["reeds"] = new JsonArray([.. advice.Reeds.Select(r => new JsonObject
        {
            ["name"] = r.Name,
            ["dentsPerInch"] = r.Dents.PerInch,
            ["heddles"] = r.Heddles,
            ["sley"] = new JsonArray([.. r.Sley.EndsPerDent.Select(e => (JsonNode)e)]),
            ["endsPerInch"] = r.Sett.PerInch,
            ["errorPercent"] = r.Error.Percent,
            ["warnings"] = new JsonArray([.. r.Warnings.Select(w => (JsonNode)w)]),
        })]),
        ["notes"] = new JsonArray([.. advice.Notes.Select(n => (JsonNode)n)]),
        ["working"] = WorkingReport.Of(advice.Ends.Working),
    };
}
