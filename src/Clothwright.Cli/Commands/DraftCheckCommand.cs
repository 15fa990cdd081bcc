using System.Collections.Immutable;
using System.CommandLine;
using Clothwright.Cli.Checks;
using Clothwright.Cli.Reports;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Threads;
using Clothwright.Core.Workings;
using Clothwright.Drawing.Drafts;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright draft check</c>: does it hang together, how long are its floats, do its edges hold.</summary>
internal sealed class DraftCheckCommand : ReportCommand
{
    private const int MostLayers = 16;

    private readonly Argument<string> _draft = new("draft") { Description = "File, weave by name, or draft in notation." };
    private readonly Option<string?> _purpose = new("--purpose") { Description = "Judges floats by what the cloth is for: " + FloatPurposeWord.All + "; needs --sett." };
    private readonly Option<bool> _child = new("--child") { Description = "It is for a small child: the strictest rule for floats." };
    private readonly Option<string?> _sett = new("--sett") { Description = "Ends in the cloth, for example 20/in or 8/cm: floats are then told in millimetres." };
    private readonly Option<string?> _picks = new("--picks") { Description = "Picks in the cloth; as many as ends if left out." };
    private readonly Option<int?> _ends = new("--ends") { Description = "Ends of the whole warp: the draft is repeated to that width." };
    private readonly Option<int?> _heddles = new("--heddles-per-shaft") { Description = "Heddles that hang on each shaft." };
    private readonly Option<int?> _layers = new("--layers") { Description = "Layers that are meant, 1 to 16: so many are then no fault. A weave by name says itself; otherwise 1." };
    private readonly Option<bool> _floating = new("--floating-selvedges") { Description = "Floating selvedges hang at both edges: then no turn of the shuttle misses." };
    private readonly Option<int?> _mark = new("--mark-floats") { Description = "In the picture, marks floats over so many threads or more; those too long for --purpose if given, else 5." };
    private readonly Option<string?> _out = new("--out") { Description = "Picture of the draft to write, .svg or .png, with what was found marked in its place and a key." };

    /// <summary>The command.</summary>
    public DraftCheckCommand()
        : base("check", "Does the cloth hang together, how long are its floats, do its edges hold?")
    {
        Arguments.Add(_draft);
        foreach (Option option in (Option[])[_purpose, _child, _sett, _picks, _ends, _heddles, _layers, _floating, _mark, _out]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        WovenDraft woven = WeaveSource.Read(input.GetValue(_draft)!, "draft", out IReadOnlyList<string> warnings, out int? named);
        Draft draft = AtWidth(woven.Draft, input.GetValue(_ends));
        var cloth = ClothAnalysis.Of(draft, LayersMeant(input.GetValue(_layers), named));
        (Derived<Sett>? ends, Derived<Sett>? picks) = Setts(input.GetValue(_sett), input.GetValue(_picks));
        bool child = input.GetValue(_child);
        string? purpose = input.GetValue(_purpose) ?? (child ? "throw" : null);
        if (purpose is not null && ends is null)
        {
            throw new InputProblemException(new InputProblem("How long a float is depends on the sett.", "--sett", "Give the sett of the cloth, for example --sett 20/in."));
        }

        var check = new DraftChecked(
            cloth,
            ends,
            picks,
            purpose is null ? null : FloatAdvice.For(cloth.Floats, FloatPurposeWord.Read(purpose, child), ends!, picks!))
        {
            Heddles = Heddles(cloth.EndsPerShaft!, input.GetValue(_heddles)),
            FileWarnings = warnings,
            FloatingSelvedges = input.GetValue(_floating),
        };
        string text = CheckText.Of(check);
        if (input.GetValue(_out) is { } path)
        {
            ClothMarks marks = AtEdges(Marks(check, input.GetValue(_mark)), check);
            OutputFolder.WriteFile(path, Picture(AtSize(woven, draft), path, marks));
            text += $"\nWrote {path}.";
        }

        return new Report(text, CheckJson.Of(check)) { ExitCode = check.Passed ? ExitCode.Done : ExitCode.CheckFailed };
    }

    private static Draft AtWidth(Draft draft, int? ends) => ends switch
    {
        null => draft,
        >= 1 and <= DraftLimits.Ends => draft.Repeated(ends.Value, draft.Picks),
        _ => throw new InputProblemException(new InputProblem($"A warp of {ends} ends cannot be checked.", "--ends", $"Give 1 to {DraftLimits.Ends}, for example 400.")),
    };

    private static (Derived<Sett>? Ends, Derived<Sett>? Picks) Setts(string? sett, string? picks)
    {
        if (sett is null)
        {
            return picks is null ? (null, null) : throw new InputProblemException(new InputProblem("Picks are given and no sett.", "--sett", "Give both, for example --sett 20/in --picks 18/in."));
        }

        Sett ends = SettText.Parse(sett, "--sett").Value;
        return (Derived.Decision("ends", ends), Derived.Decision("picks", picks is null ? ends : SettText.Parse(picks, "--picks").Value));
    }

    private static ImmutableArray<InputProblem> Heddles(EndsPerShaft needed, int? perShaft)
    {
        if (perShaft is null) return [];
        if (perShaft < 1)
        {
            throw new InputProblemException(new InputProblem($"{perShaft} heddles on a shaft carry nothing.", "--heddles-per-shaft", "Count the heddles of one shaft, for example 60."));
        }

        // Only the number of heddles matters here; the rest describes no loom in particular.
        var loom = new Loom("loom", "the loom", LoomKind.Floor, Length.FromMetres(1), needed.Counts.Length, 0, ShedAction.Levers, Derived.Decision("loom waste", Length.Zero))
        {
            HeddlesPerShaft = perShaft.Value,
        };
        return [.. needed.Problems(loom)];
    }

    private static int LayersMeant(int? given, int? named) => given switch
    {
        null => named ?? 1,
        >= 1 and <= MostLayers => given.Value,
        _ => throw new InputProblemException(new InputProblem($"{given} layers are not reckoned with.", "--layers", $"Give 1 to {MostLayers}, for example --layers 2 for a tube or a double width.")),
    };

    private static ClothMarks Marks(DraftChecked check, int? over) => (over, check.Floats) switch
    {
        ( < 2, _) => throw new InputProblemException(new InputProblem($"A float over {over} threads is a plain crossing.", "--mark-floats", "Give 2 or more, for example --mark-floats 5.")),
        ({ } threads, _) => ClothMarks.Of(check.Cloth, threads),
        (null, { } advice) => ClothMarks.Of(check.Cloth, advice, check.Ends!.Value.Spacing, check.Picks!.Value.Spacing),
        _ => ClothMarks.Of(check.Cloth),
    };

    private static ClothMarks AtEdges(ClothMarks marks, DraftChecked check) => check.FloatingSelvedges ? marks with { Turns = [] } : marks;

    // Colours of a file are listed thread by thread: they go on as the draft does.
    private static WovenDraft AtSize(WovenDraft woven, Draft draft) => woven with
    {
        Draft = draft,
        Warp = woven.Warp with { Colours = woven.Warp.Colours.IsEmpty ? [] : [.. Enumerable.Range(0, draft.Ends).Select(e => woven.Warp.Colours[e % woven.Warp.Colours.Length])] },
    };

    private static byte[] Picture(WovenDraft woven, string path, ClothMarks marks) => Path.GetExtension(path).ToLowerInvariant() is ".svg" or ".png"
        ? DraftFile.Bytes(woven, path, new DraftStyle { Marks = marks })
        : throw new InputProblemException(new InputProblem($"\"{path}\" is no name for a picture.", "--out", "Give the file the ending .svg or .png; draft convert writes the other forms."));
}
