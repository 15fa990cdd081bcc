using Clothwright.Client.Sheet;
using Clothwright.Client.Texts;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Worksheets;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Drafting;

/// <summary>Every weave by name, with its choices in a sentence and its draft at once.</summary>
public partial class WeaveMaker : SheetPart
{
    private const string Canvas = "making-canvas";
    private const int LeastEnds = 44;
    private const int LeastPicks = 20;

    private readonly Dictionary<string, string> _values = new(StringComparer.Ordinal);
    private WeaveEntry _entry = WeaveCatalogue.Find("twill")!;
    private Weave _made = null!;
    private Weave? _shown;
    private InputProblem? _problem;
    private bool _open;
    private bool _laidOut;

    /// <inheritdoc />
    protected override void OnInitialized()
    {
        base.OnInitialized();
        _made = WeaveCatalogue.Make(_entry.Name, null, _values).Value;
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_open || ReferenceEquals(_shown, _made)) return;
        _shown = _made;
        await DraftScript.LoadAsync();
        if (!_laidOut) DraftScript.Open(Canvas, "", _ => { });
        _laidOut = true;
        DraftPaper.Show(Canvas, _made.Draft, LeastEnds, LeastPicks);
    }

    private void Toggle()
    {
        _open = !_open;
        (_shown, _laidOut) = (null, false);
    }

    private void TakeEntry(ChangeEventArgs change)
    {
        if (WeaveCatalogue.Find(change.Value as string ?? "") is not { } entry) return;
        _entry = entry;
        _values.Clear();
        _made = WeaveCatalogue.Make(entry.Name, null, _values).Value;
        TryIt();
    }

    private string ValueOf(WeaveParameter parameter) => _values.GetValueOrDefault(parameter.Name) ?? parameter.Default;

    private InputProblem? Take(WeaveParameter parameter, string value)
    {
        string? before = _values.GetValueOrDefault(parameter.Name);
        if (value.Trim() == parameter.Default) _values.Remove(parameter.Name);
        else _values[parameter.Name] = value.Trim();
        Parsed<Weave> made = WeaveCatalogue.Make(_entry.Name, null, _values);
        if (made.TryGet(out Weave? weave))
        {
            _made = weave;
            TryIt();
            StateHasChanged();
            return null;
        }

        if (before is null) _values.Remove(parameter.Name);
        else _values[parameter.Name] = before;
        return made.Problem;
    }

    // The sentence with this place left open says what the blank is for.
    private string Label(string place)
    {
        string text = Phrases[$"making.{_entry.Name}"];
        foreach (WeaveParameter parameter in _entry.Parameters)
        {
            string fill = parameter.Name == place ? "…" : parameter.Choices.IsEmpty ? ValueOf(parameter) : Phrases.Or($"choice.{ValueOf(parameter)}", ValueOf(parameter));
            text = text.Replace($"{{{parameter.Name}}}", fill, StringComparison.Ordinal);
        }

        return text;
    }

    // By name where the name says it all; else as a draft.
    private WeaveDecision Decision()
    {
        string name = _values.Count == 1 && _values.TryGetValue("base", out string? figures)
            ? $"{figures} {_entry.Name}"
            : string.Join(' ', _values.Select(v => $"{v.Key}={v.Value}").Prepend(_entry.Name));
        bool same = WeaveCatalogue.Make(name).TryGet(out Weave? read) && read.Draft.Equals(_made.Draft);
        return same ? new WeaveDecision.Named(name) : new WeaveDecision.Drawn(_made.Draft) { PatternPicks = DraftWork.PatternPicksOf(_made) };
    }

    // The cloth shows it at once; the worksheet changes when she says so.
    private void TryIt()
    {
        _problem = Desk.Try(Worksheet.Woven(Decision()));
        if (_problem is not null) Desk.LeaveTried();
    }

    private void Decide()
    {
        Desk.EndRun();
        Desk.Decide(Worksheet.Woven(Decision()));
    }
}
