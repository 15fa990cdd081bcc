using System.Numerics;
using System.Runtime.CompilerServices;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Places;

namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>Paints a view of a cloth: near by, thread by thread; from afar, each pixel the mean light of what it covers.</summary>
/// <remarks>
/// The page's shader reckons the same numbers in the same order. By pixels for each place: from 2 on near by, below 1.2 from afar, between both
/// mixed. Rows may be painted side by side. What is done for each pixel is compiled fully at its first call: a command's run of a second would be
/// over before the runtime saw that it pays.
/// </remarks>
public sealed partial class ClothPainter
{
    private const float NearFrom = 2;
    private const float FarUpTo = 1.2f;
    private const double FewPixels = 8;
    private readonly LookNumbers _numbers;
    private readonly ClothView _view;
    private readonly FaceCells _cells;
    private readonly LightTable[] _lights;
    private readonly PlaceSample[] _columns;
    private readonly PlaceSample[] _rows;
    private readonly ClothThread[] _ends;
    private readonly ClothThread[] _picks;
    private readonly PlaceSpan[] _spansAcross = [];
    private readonly PlaceSpan[] _spansAlong = [];
    private readonly float[] _far;
    private readonly float[] _exposure;
    private readonly Vector3 _behind;
    private readonly float _streaks;
    private readonly float _near;
    private readonly int _fine;

    /// <summary>Makes ready to paint.</summary>
    /// <param name="numbers">The cloth.</param>
    /// <param name="view">How it is looked at.</param>
    /// <param name="quick">Whether fewer points a pixel will do, as in print: one where a thread is 8 pixels wide or more, else four.</param>
    public ClothPainter(LookNumbers numbers, ClothView view, bool quick = false)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        ArgumentNullException.ThrowIfNull(view);
        LookDescription look = numbers.Description;
        _view = view;
        _cells = FaceCells.Of(look, view.Face);
        _lights = Tables(numbers, view.Lighting);
        double width = view.ExtentAcross(look);
        double length = view.ExtentAlong(look);
        ThreadPlaces across = ThreadPlaces.Lay(look.Ends, look.SharedEnds, look.EndSett, width);
        ThreadPlaces along = ThreadPlaces.Lay(look.Picks, look.SharedPicks, look.PickSett, length);
        bool turned = view.Face == Face.Back;
        _numbers = view.Lighting == view.Usual ? numbers : numbers.SeenFrom(_cells, across, along, view.Lighting.Eye, turned);
        double pixels = PixelsPerPlace(across, along, view.PerPixel);
        _near = Smooth(FarUpTo, NearFrom, (float)pixels);
        _fine = (pixels < FewPixels ? 3 : 2) - (quick ? 1 : 0);
        _streaks = Math.Clamp(((float)pixels - 8) / 14, 0, 1);
        _columns = PlaceSamples.Along(across, view.Left, view.PerPixel / _fine, view.Width * _fine, width, turned);
        _rows = PlaceSamples.Along(along, view.Low, view.PerPixel / _fine, view.Height * _fine, length, turned: false);
        _ends = ClothThread.Every(numbers.Ends, numbers.Looks, Threads(across, look.SharedEnds.Length), length);
        _picks = ClothThread.Every(numbers.Picks, numbers.Looks, Threads(along, look.SharedPicks.Length), width);
        _behind = new Vector3((float)view.Behind.Red, (float)view.Behind.Green, (float)view.Behind.Blue);
        _far = FarLight.Of(_numbers, _lights, across, along);
        float[] window = view.Lighting == view.Usual ? _far : FarLight.Of(numbers, Tables(numbers, view.Usual), across, along);
        _exposure = Exposure.Of(numbers, _cells, window, turned);
        if (_near >= 1) return;
        _spansAcross = PlaceSpan.Along(across, view.Left, view.PerPixel, view.Width, width, turned);
        _spansAlong = PlaceSpan.Along(along, view.Low, view.PerPixel, view.Height, length, turned: false);
    }

    /// <summary>Paints one row of pixels.</summary>
    /// <param name="row">0-based row from the bottom.</param>
    /// <param name="light">Linear red, green and blue of each pixel, from the left.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Row(int row, Span<Vector3> light)
    {
        for (int column = 0; column < _view.Width; column++)
        {
            Vector3 near = _near > 0 ? Near(column, row) : default;
            light[column] = _near >= 1 ? near : Vector3.Lerp(Far(column, row), near, _near);
        }
    }

    internal static double PixelsPerPlace(ThreadPlaces across, ThreadPlaces along, double perPixel) => Math.Min(across.Pitch, along.Pitch) / perPixel;

    internal static float Smooth(float from, float to, float value)
    {
        float t = Math.Clamp((value - from) / (to - from), 0, 1);
        return t * t * (3 - 2 * t);
    }

    private static LightTable[] Tables(LookNumbers numbers, Lighting lighting) =>
        [.. numbers.Lights.Select(l => LightTable.Of(numbers.Lustres[l.Lustre], l.Direction, l.TwistRadians, numbers.Steepest(l.Direction), lighting))];

    // A place holds as many threads as share it: enough for the last one.
    private static int Threads(ThreadPlaces places, int shared) => places.FirstThreads[^1] + Math.Max(1, shared);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Vector3 Near(int column, int row)
    {
        Vector3 sum = default;
        for (int j = 0; j < _fine; j++)
        {
            for (int i = 0; i < _fine; i++) sum += Point(_columns[column * _fine + i], _rows[row * _fine + j]);
        }

        return sum / (_fine * _fine);
    }
}
