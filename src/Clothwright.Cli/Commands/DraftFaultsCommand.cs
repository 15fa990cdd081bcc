using System.CommandLine;
using Clothwright.Cli.Faults;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright draft faults</c>: which slips explain what is seen in the cloth, or what a slip will look like.</summary>
internal sealed class DraftFaultsCommand : ReportCommand
{
    private readonly Argument<string> _draft = new("draft") { Description = "What was meant: file, weave by name, or draft in notation." };
    private readonly Option<string?> _seen = new("--seen") { Description = "What she sees: a file with a grid of marks, a picture in two tones, or the grid itself, for example 1100/0110. End 1 at the left, first pick first." };
    private readonly Option<string?> _marks = new("--marks") { Description = "The same size as the draft, with 1 or X only where the cloth looks wrong." };
    private readonly Option<string[]> _slip = new("--slip") { Description = "Shows what a slip will look like, for example \"end 7 on shaft 3\"; may be given several times. Forms: " + string.Join("; ", SlipPhrase.Forms) + "." };
    private readonly Option<int?> _ends = new("--ends") { Description = "Ends that were meant, where the draft is one repeat." };
    private readonly Option<int> _most = new("--most-slips") { Description = "Slips to look for at once, 1 to 6.", DefaultValueFactory = _ => 3 };

    /// <summary>The command.</summary>
    public DraftFaultsCommand()
        : base("faults", "Which slips in threading, tie-up or treadling explain what is seen, and how to mend them.")
    {
        Arguments.Add(_draft);
        foreach (Option option in (Option[])[_seen, _marks, _slip, _ends, _most]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        Draft draft = WeaveSource.Read(input.GetValue(_draft)!, "draft", out _).Draft;
        string? seen = input.GetValue(_seen);
        string? marks = input.GetValue(_marks);
        string[] slips = input.GetValue(_slip) ?? [];
        var limits = new FaultLimits(input.GetValue(_most));
        if (limits.Problem() is { } problem) throw new InputProblemException(problem with { Where = "--most-slips" });
        return (seen, marks, slips.Length) switch
        {
            ({ } path, null, 0) => Explained(draft, SeenCloth.Read(path, "--seen"), input.GetValue(_ends), limits),
            (null, { } path, 0) => ExplainedMarks(draft, SeenCloth.Read(path, "--marks"), input.GetValue(_ends), limits),
            (null, null, > 0) => Foretold(draft, slips, input.GetValue(_ends)),
            _ => throw new InputProblemException(new InputProblem(
                "It is not clear what to look for.", "options", "Give one of --seen (the cloth as it is), --marks (where it looks wrong) or --slip (what a slip would do).")),
        };
    }

    private static Report Explained(Draft draft, Drawdown seen, int? ends, FaultLimits limits)
    {
        Draft meant = PlannedWidth.Of(draft, seen.Ends, seen.Picks, ends, limits.MostSlips);
        return Found(FaultFinder.Find(meant, seen, limits), limits, marked: false);
    }

    private static Report ExplainedMarks(Draft draft, Drawdown marks, int? ends, FaultLimits limits)
    {
        Draft meant = draft.Repeated(ends ?? marks.Ends, marks.Picks);
        var wrong = from pick in Enumerable.Range(0, marks.Picks)
                    from end in Enumerable.Range(0, marks.Ends)
                    where marks[pick, end]
                    select (pick, end);
        return Found(FaultFinder.FindFromMarks(meant, wrong, limits), limits, marked: true);
    }

    private static Report Found(FaultReport report, FaultLimits limits, bool marked) => new(FaultText.Of(report, limits, marked), FaultJson.Of(report))
    {
        ExitCode = report.NothingWrong ? ExitCode.Done : ExitCode.CheckFailed,
    };

    private static Report Foretold(Draft draft, string[] slips, int? ends)
    {
        Draft before = ends is { } width
            ? draft.Repeated(width >= 1 ? width : throw new InputProblemException(new InputProblem($"{width} ends make no warp.", "--ends", "Give 1 or more.")), draft.Picks)
            : draft;
        var steps = new List<(Draft Before, Slip Slip, SlipEffect Effect)>();
        foreach (string words in slips)
        {
            Slip slip = SlipPhrase.Read(words, before);
            Draft after = slip.Apply(before);
            if (after.Ends == 0 || after.Picks == 0) throw new InputProblemException(new InputProblem("With this slip nothing is left of the cloth.", "--slip", "Give a larger draft."));
            steps.Add((before, slip, slip.Effect(before)));
            before = after;
        }

        return new Report(SlipText.Of(steps), SlipJson.Of(steps));
    }
}
