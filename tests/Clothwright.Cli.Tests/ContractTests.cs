using System.Text.Json;
using Clothwright.TestKit;

namespace Clothwright.Cli.Tests;

/// <summary>The fields that other programs rely on; others may be added, none may go.</summary>
public class ContractTests
{
    private static readonly string[] Cotton = ["--system", "cotton"];

    public static TheoryData<string, string[], string> Promises => new()
    {
        { "yarn convert", ["yarn", "convert", "8/2", .. Cotton], "tex metresPerKilogram yardsPerPound resultantCounts otherReadings" },
        { "resultant counts", ["yarn", "convert", "8/2", .. Cotton], "resultantCounts.tex resultantCounts.dtex resultantCounts.denier resultantCounts.metric resultantCounts.cotton resultantCounts.worsted resultantCounts.woollen-run resultantCounts.woollen-cut resultantCounts.linen resultantCounts.silk-english" },
        { "sett", ["sett", "--yarn", "8/2", .. Cotton, "--fibre", "cotton", "--weave", "plain", "--reeds", "10"], "diameterMillimetres wrapsPerInch maximumEndsPerCentimetre recommendedEndsPerCentimetre recommendedEndsPerInch range methods.name methods.endsPerCentimetre methods.source reeds.dentsPerInch reeds.sley reeds.endsPerInch reeds.errorPercent" },
        { "draft check", ["draft", "check", "2/2 twill"], "ends picks shafts treadles maxWarpFloat.face maxWarpFloat.back maxWeftFloat.face maxWeftFloat.back maxWarpFloat.face.length maxWarpFloat.face.end maxWarpFloat.face.fromPick maxWeftFloat.back.pick maxWeftFloat.back.fromEnd hangsTogether layers components tabbyAvailable looseSelvedgePicks endsPerShaft warpFaceFraction drawdown problems" },
        { "draft fit", ["draft", "fit", "2/2 twill", "--shafts", "4", "--treadles", "6"], "feasible shafts treadles treadling liftPlan optimal" },
        { "colour difference", ["colour", "difference", "#5b2a86", "#e86a17"], "deltaE2000 deltaE76" },
        { "colour mix", ["colour", "mix", "#5b2a86", "#e86a17", "--share", "0.4"], "srgb lab" },
        { "cloth", ["cloth", "plain", "--yarn", "8/2", .. Cotton, "--fibre", "cotton", "--ends", "20/in"], "warpCrimpFraction weftCrimpFraction gramsPerSquareMetre thicknessMillimetres coverFraction warpCover weftCover tightness" },
        { "cloth of a worksheet", ["cloth", Repository.PathOf("samples", "reedbed-scarves.json")], "warpCrimpFraction weftCrimpFraction gramsPerSquareMetre thicknessMillimetres coverFraction warpCover weftCover tightness" },
        { "plan", ["plan", Repository.PathOf("samples", "reedbed-scarves.json")], "ends endsPerCentimetre reedWidthCentimetres warpLengthMetres warpTakeUpFraction weftTakeUpFraction picks yarns.id yarns.warpMetres yarns.weftMetres yarns.metres yarns.grams yarns.gramsUpper95 yarns.packages yarns.cost pieces.finishedWidthCentimetres pieces.finishedLengthCentimetres gramsPerSquareMetre hours cost warnings cautions" },
    };

    [Theory]
    [MemberData(nameof(Promises))]
    public void A_command_keeps_every_field_it_promised(string command, string[] args, string fields)
    {
        CommandLine run = CommandLine.Run([.. args, "--json"]);

        Assert.True(run.ExitCode == ExitCode.Done, $"{command}: {run.Error}");
        Assert.All(fields.Split(' '), field => Assert.True(Has(run.Json, field), $"{command} has no {field}."));
    }

    [Fact]
    public void The_drawdown_has_the_first_pick_first_and_1_for_warp_on_top()
    {
        JsonElement rows = CommandLine.Run("draft", "check", "1234 | 1:1 2:2 3:3 4:4 | 1234", "--json").Json.GetProperty("drawdown");

        Assert.Equal(["1000", "0100", "0010", "0001"], rows.EnumerateArray().Select(r => r.GetString()));
    }

    // In a list, every entry must have the field.
    private static bool Has(JsonElement json, string path)
    {
        int dot = path.IndexOf('.', StringComparison.Ordinal);
        string first = dot < 0 ? path : path[..dot];
        if (json.ValueKind == JsonValueKind.Array) return json.GetArrayLength() > 0 && json.EnumerateArray().All(e => Has(e, path));
        return json.ValueKind == JsonValueKind.Object && json.TryGetProperty(first, out JsonElement inner) && (dot < 0 || Has(inner, path[(dot + 1)..]));
    }
}
