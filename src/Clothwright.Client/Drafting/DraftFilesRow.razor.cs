using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Clothwright.Client.Sheet;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Pictures;
using Clothwright.Interchange.Drafts;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Drafting;

/// <summary>Drafts as files, in and out.</summary>
public partial class DraftFilesRow : SheetPart
{
    private string? _taken;
    private InputProblem? _problem;
    private ImmutableArray<string> _warnings = [];

    /// <summary>The draft.</summary>
    [Parameter, EditorRequired]
    public DraftWork Work { get; set; } = null!;

    /// <summary>How it is drawn.</summary>
    [Parameter, EditorRequired]
    public DraftView View { get; set; } = null!;

    /// <summary>Called when a draft was taken in.</summary>
    [Parameter, EditorRequired]
    public Action Changed { get; set; } = null!;

    /// <summary>Takes the file that the script has read.</summary>
    public void Take()
    {
        string name = DraftScript.TakenName();
        (_taken, _warnings) = (null, []);
        Parsed<DraftFileReading> read = Read(name);
        _problem = read.Problem;
        if (read.TryGet(out DraftFileReading? reading))
        {
            Draft draft = reading.Woven.Draft;
            Desk.EndRun();
            if (Work.Decide(draft.Name.Length > 0 ? draft : draft with { Name = Path.GetFileNameWithoutExtension(name) }, run: null, keepName: true))
            {
                _taken = Phrases.With("files.taken", ("name", name), ("ends", Number(draft.Ends)), ("picks", Number(draft.Picks)), ("shafts", Number(draft.Shafts)));
                _warnings = reading.Warnings;
            }
            else
            {
                _problem = Work.Problem;
            }
        }

        StateHasChanged();
        Changed();
    }

    private Parsed<DraftFileReading> Read(string name)
    {
        byte[] bytes = DraftScript.TakenBytes();
        if (DraftFiles.FormOf(bytes) != DraftFileForm.Picture) return DraftFiles.Read(bytes, name);
        int width = DraftScript.PictureWidth();
        if (width == 0) return new InputProblem(Phrases["files.picture"], name, Phrases["files.picture.mend"]);
        Parsed<DrawdownPictureReading> picture = DrawdownTones.Read(width, DraftScript.PictureTones());
        if (!picture.TryGet(out DrawdownPictureReading? seen)) return picture.Problem!;
        Parsed<Draft> draft = FewestDraft.Of(seen.Drawdown);
        return draft.TryGet(out Draft? fewest) ? new DraftFileReading(WovenDraft.Of(fewest), DraftFileForm.Picture, []) : draft.Problem!;
    }

    private void Save(string ending, string type)
    {
        string name = $"{FileName}.{ending}";
        Parsed<byte[]> file = DraftFiles.Write(Woven(), name);
        _problem = file.Problem;
        if (file.TryGet(out byte[]? bytes)) DraftScript.SaveText(name, type, Encoding.UTF8.GetString(bytes));
    }

    private void SavePicture() => DraftScript.SaveText($"{FileName}.svg", "image/svg+xml", DraftPicture.Svg(Work.Draft, DraftTurns.Of(View.Way), View.InNumbers));

    private string FileName => string.Concat(Work.Weave.Name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or ' ' ? c : '-')).Trim() is { Length: > 0 } name ? name : "draft";

    // One repeat with the colours of its threads.
    private WovenDraft Woven()
    {
        Dictionary<string, Core.Colours.SrgbColour> colours = Worksheet.Shelf.ToDictionary(y => y.Id, y => y.Colour, StringComparer.Ordinal);
        Draft draft = Work.Draft with { Name = Work.Weave.Name };
        return new WovenDraft(
            draft,
            WovenThreads.Plain with { Colours = [.. Enumerable.Range(0, draft.Ends).Select(e => colours[Work.YarnOfEnd(e)])] },
            WovenThreads.Plain with { Colours = [.. Work.YarnsOfPicks(draft.Picks).Select(y => colours[y])] });
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
