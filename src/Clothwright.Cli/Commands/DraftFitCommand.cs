using System.CommandLine;
using Clothwright.Cli.Reports;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;
using Clothwright.Core.Weaves.RigidHeddles;
using Clothwright.Solving.TieUps;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright draft fit</c>: a draft fitted to a loom, or why it cannot be.</summary>
internal sealed class DraftFitCommand : ReportCommand
{
    private const double MostSeconds = 86_400;

    private readonly Argument<string> _draft = new("draft") { Description = "File, weave by name, or draft in notation." };
    private readonly Option<int?> _shafts = new("--shafts") { Description = "Shafts of the loom." };
    private readonly Option<int?> _treadles = new("--treadles") { Description = "Treadles of the loom; 0 for levers." };
    private readonly Option<int> _feet = new("--feet") { Description = "Treadles that may be pressed at once, 1 to 3.", DefaultValueFactory = _ => 1 };
    private readonly Option<string> _shed = new("--shed") { Description = "rising, sinking, counterbalance, countermarche or levers.", DefaultValueFactory = _ => "rising" };
    private readonly Option<double?> _seconds = new("--seconds") { Description = "Seconds to try to prove that no fewer treadles would do, where the quick search cannot." };
    private readonly Option<int?> _heddles = new("--rigid-heddles") { Description = "Rigid heddles instead of shafts, 1 to 4." };
    private readonly Option<int> _sticks = new("--sticks") { Description = "With rigid heddles: pick-up sticks she is ready to use.", DefaultValueFactory = _ => 0 };
    private readonly Option<string?> _heddle = new("--heddle") { Description = "Number of the rigid heddles, for example 10-dent; prints the table to dress them by." };
    private readonly Option<string?> _sett = new("--sett") { Description = "With --heddle: sett of the warp, for example 20/in; as many ends as the heddles allow if left out." };
    private readonly Option<string?> _changed = new("--changed") { Description = "File for the draft after the smallest change that would do, where the loom cannot weave it as it is." };
    private readonly Option<string?> _out = new("--out") { Description = "File for the fitted draft: .wif, .txt, .csv, .svg or .png." };

    /// <summary>The command.</summary>
    public DraftFitCommand()
        : base("fit", "A draft fitted to a loom, with the fewest shafts and treadles, or why it cannot be.")
    {
        Arguments.Add(_draft);
        foreach (Option option in (Option[])[_shafts, _treadles, _feet, _shed, _seconds, _heddles, _sticks, _heddle, _sett, _changed, _out]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        Draft draft = WeaveSource.Read(input.GetValue(_draft)!, "draft", out _).Draft;
        return input.GetValue(_heddles) is { } heddles ? OnRigidHeddles(input, draft, heddles) : OnShafts(input, draft);
    }

    private Report OnShafts(ParseResult input, Draft draft)
    {
        int shafts = Needed(input.GetValue(_shafts), "--shafts", "--shafts 4 --treadles 6");
        int treadles = Needed(input.GetValue(_treadles), "--treadles", "--treadles 6, or --treadles 0 for levers");
        ShedAction shed = LoomWords.ParseShed(input.GetValue(_shed)!).At("--shed");
        double? seconds = Seconds(input.GetValue(_seconds));
        var limits = new LoomLimits(shafts, treadles, input.GetValue(_feet), treadles == 0 ? ShedAction.Levers : shed);
        LoomFitResult fit = LoomFit.For(draft, limits, seconds is { } time ? new SolverTieUpSearch(TimeSpan.FromSeconds(time)) : null);
        if (input.GetValue(_out) is { } path && fit.Draft is { } fitted)
        {
            OutputFolder.WriteFile(path, DraftFile.Bytes(Interchange.Drafts.WovenDraft.Of(fitted), path));
        }

        WriteChanged(input.GetValue(_changed), fit.SmallestChange);
        return new Report(FitText.Of(fit, limits, seconds), FitJson.Of(fit, limits)) { ExitCode = fit.Feasible ? ExitCode.Done : ExitCode.CheckFailed };
    }

    private Report OnRigidHeddles(ParseResult input, Draft draft, int heddles)
    {
        int sticks = input.GetValue(_sticks);
        Within(heddles, 1, RigidHeddleShed.MostHeddles, "--rigid-heddles", "rigid heddles");
        Within(sticks, 0, RigidHeddleFit.MostSticks, "--sticks", "pick-up sticks");
        RigidHeddlePlan plan = RigidHeddleFit.Of(draft, heddles, sticks);
        WriteChanged(input.GetValue(_changed), plan.SmallestChange);
        RigidHeddleTable? table = null;
        if (input.GetValue(_heddle) is { } number && plan.CanBeWoven)
        {
            RigidHeddle heddle = RigidHeddle.Parse(number, heddles).At("--heddle");
            Sett sett = input.GetValue(_sett) is { } given ? SettText.Parse(given, "--sett").Value : RigidHeddleSett.Greatest(heddle, heddles, plan.Groups).Value;
            table = RigidHeddleTable.Of(plan, heddle, sett);
            return Answer(plan, table, heddle, sett);
        }

        return Answer(plan, table, null, null);
    }

    private static void WriteChanged(string? path, DraftReduction? change)
    {
        if (path is null || change is null) return;
        OutputFolder.WriteFile(path, DraftFile.Bytes(Interchange.Drafts.WovenDraft.Of(FewestDraft.Of(change.Cloth).At("draft")), path));
    }

    private static Report Answer(RigidHeddlePlan plan, RigidHeddleTable? table, RigidHeddle? heddle, Sett? sett) =>
        new(RigidHeddleText.Of(plan, table, heddle, sett), RigidHeddleJson.Of(plan, table, heddle, sett))
        {
            ExitCode = plan.CanBeWoven ? ExitCode.Done : ExitCode.CheckFailed,
        };

    private static int Needed(int? given, string option, string example) => given
        ?? throw new InputProblemException(new InputProblem("The loom is not known.", option, $"Give for example {example}, or --rigid-heddles 2."));

    private static double? Seconds(double? given) => given is null or (> 0 and <= MostSeconds)
        ? given
        : throw new InputProblemException(new InputProblem($"{given} seconds are no time to search.", "--seconds", $"Give a number above 0, at most {MostSeconds:0}, for example 20."));

    private static void Within(int given, int least, int most, string option, string things)
    {
        if (given < least || given > most)
        {
            throw new InputProblemException(new InputProblem($"{given} {things} are not reckoned with.", option, $"Give {least} to {most}."));
        }
    }
}
