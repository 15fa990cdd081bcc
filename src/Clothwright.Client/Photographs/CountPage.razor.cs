using System.Globalization;
using Clothwright.Client.Sheet;
using Clothwright.Client.Texts;
using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Clothwright.Client.Photographs;

/// <summary>The page that counts in photographs.</summary>
public partial class CountPage
{
    private readonly List<PhotoPoint> _ruler = [];
    private readonly List<PhotoPoint> _card = [];
    private PhotoPoint _middle;
    private double _width;
    private double _height;
    private int _percent = 60;
    private string _tool = "ruler";
    private string _apart = "50 mm";
    private string? _problem;
    private string _state = "";
    private bool _busy;
    private PhotoSquare? _square;
    private ClothCount? _count;
    private WrapCount? _wraps;

    [Inject]
    private Phrases Phrases { get; set; } = null!;

    [Inject]
    private Desk Desk { get; set; } = null!;

    private IReadOnlyList<(string Value, string Word)> Tools =>
        [("ruler", Phrases["count.tool.ruler"]), ("card", Phrases["count.tool.card"]), ("square", Phrases["count.tool.square"])];

    private List<PhotoPoint> Marks => _card.Count > 0 ? _card : _ruler;

    private double Side => Math.Min(_width, _height) * _percent / 100;

    /// <inheritdoc />
    protected override Task OnInitializedAsync() => PhotoScript.LoadAsync();

    /// <inheritdoc />
    protected override void OnAfterRender(bool firstRender) => Draw();

    private static string Whole(double pixels) => pixels.ToString("0", CultureInfo.InvariantCulture);

    private async Task OpenAsync(string field)
    {
        string size = await PhotoScript.OpenAsync(field, "photo");
        (_count, _wraps, _square, _state) = (null, null, null, "");
        if (size.Length == 0)
        {
            _problem = Phrases["count.none"];
            return;
        }

        string[] sides = size.Split(',');
        (_width, _height) = (double.Parse(sides[0], CultureInfo.InvariantCulture), double.Parse(sides[1], CultureInfo.InvariantCulture));
        _middle = new PhotoPoint(_width / 2, _height / 2);
        _ruler.Clear();
        _card.Clear();
        _ruler.AddRange([new PhotoPoint(_width * 0.2, _height * 0.9), new PhotoPoint(_width * 0.8, _height * 0.9)]);
        _problem = null;
    }

    private void UseTool(string tool)
    {
        _tool = tool;
        if (tool == "ruler") _card.Clear();
        if (tool == "card" && _card.Count == 0)
        {
            (double w, double h) = (_width, _height);
            _card.AddRange([new(w * 0.2, h * 0.6), new(w * 0.8, h * 0.6), new(w * 0.8, h * 0.95), new(w * 0.2, h * 0.95)]);
        }
    }

    // The mark nearest the tap moves there; so one tap each sets them all.
    private void Tapped(MouseEventArgs tap)
    {
        double scale = PhotoScript.ShownScale("photo");
        var place = new PhotoPoint(tap.OffsetX * scale, tap.OffsetY * scale);
        if (_tool == "square")
        {
            SetMiddle(place);
            return;
        }

        int nearest = 0;
        for (int i = 1; i < Marks.Count; i++)
        {
            if (Marks[i].PixelsTo(place) < Marks[nearest].PixelsTo(place)) nearest = i;
        }

        Marks[nearest] = place;
    }

    private void Move(int at, object? value, bool across)
    {
        if (!double.TryParse(value as string, NumberStyles.Float, CultureInfo.InvariantCulture, out double pixels)) return;
        Marks[at] = across ? Marks[at] with { X = Math.Clamp(pixels, 0, _width) } : Marks[at] with { Y = Math.Clamp(pixels, 0, _height) };
    }

    private void Resize(ChangeEventArgs change)
    {
        if (int.TryParse(change.Value as string, CultureInfo.InvariantCulture, out int percent)) _percent = percent;
        SetMiddle(_middle);
    }

    private void SetMiddle(PhotoPoint place) => _middle = new PhotoPoint(
        Math.Clamp(place.X, Side / 2, _width - Side / 2),
        Math.Clamp(place.Y, Side / 2, _height - Side / 2));

    private Task CountAsync() => WorkAsync(square =>
    {
        Parsed<ClothCount> count = ClothCounter.Count(square.Photograph, square.Scale, square.Area, CountDetail.Quick);
        (_count, _wraps) = (count.Succeeded ? count.Value : null, null);
        return count.Problem;
    });

    // Wraps lie along the square: the band runs through its middle.
    private Task WrapsAsync() => WorkAsync(square =>
    {
        double side = square.Photograph.Width;
        var band = new PhotoBand(new PhotoPoint(2, side / 2), new PhotoPoint(side - 2, side / 2), side / 8);
        Parsed<WrapCount> wraps = WrapCounter.Count(square.Photograph, square.Scale, band);
        (_wraps, _count) = (wraps.Succeeded ? wraps.Value : null, null);
        return wraps.Problem;
    });

    private async Task WorkAsync(Func<PhotoSquare, InputProblem?> work)
    {
        if (_busy) return;
        Parsed<Length> apart = LengthText.Parse(_apart);
        if (Marks.Count == 2 && !apart.Succeeded)
        {
            _problem = Phrases["count.length"];
            return;
        }

        (_busy, _problem, _state) = (true, null, Phrases["count.running"]);
        StateHasChanged();
        await PageScript.AfterPaintAsync();
        Parsed<PhotoSquare> square = PhotoSquare.Take(Marks, apart.Succeeded ? apart.Value : Length.Zero, _middle, Side);
        _square = square.Succeeded ? square.Value : null;
        bool failed = _square is null || work(_square) is not null;
        _problem = failed ? Phrases[_square is null ? "count.marks" : "count.better"] : null;
        (_busy, _state) = (false, failed ? "" : Phrases["count.done"]);
    }

    private void Again(double times, bool picks)
    {
        if (_square is null || _count is null) return;
        ThreadSetCount before = picks ? _count.Picks : _count.Ends;
        Parsed<ThreadSetCount> again = ClothCounter.Recount(_square.Photograph, _square.Scale, _square.Area, CountDetail.Quick, before.Sett.Value * times, before.AngleDegrees, picks);
        if (again.TryGet(out ThreadSetCount? count)) _count = picks ? _count with { Picks = count } : _count with { Ends = count };
        _problem = again.Succeeded ? null : Phrases["count.beyond"];
    }

    private void Draw()
    {
        if (_width == 0) return;
        double[] marks = [.. Marks.SelectMany(m => (double[])[m.X, m.Y])];
        double[] ends = _square is null ? [] : _count is { } count ? _square.Shown(count.Ends.Gaps.SelectMany(g => g)) : _wraps is { } wraps ? _square.Shown(wraps.Gaps) : [];
        double[] picks = _square is not null && _count is not null ? _square.Shown(_count.Picks.Gaps.SelectMany(g => g)) : [];
        PhotoScript.Show("photo", marks, (double[])[_middle.X, _middle.Y, Side], ends, picks);
    }
}
