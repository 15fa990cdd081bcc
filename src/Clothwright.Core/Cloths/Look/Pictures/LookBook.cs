using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Places;
using Clothwright.Core.Colours;

namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>Numbers the looks, lustres and lights of a cloth as they are met.</summary>
internal sealed class LookBook
{
    // How far a thread wanders aside, as a share of its place, for each unit of unevenness; and how far its fibres show as streaks. By eye.
    private const double Wander = 1.1;
    private const double MostWander = 0.07;

    private readonly Dictionary<ThreadLook, int>[] _known = [Fresh(), Fresh(), Fresh(), Fresh()];
    private readonly List<float> _looks = [];
    private readonly List<Lustre> _lustres = [];
    private readonly List<LightKind> _lights = [];
    private readonly List<float> _stretches = [];

    public float[] Looks => [.. _looks];

    public Lustre[] Lustres => [.. _lustres];

    public LightKind[] Lights => [.. _lights];

    public float[] Stretches => [.. _stretches];

    /// <summary>The number of a look.</summary>
    public int NumberOf(ThreadLook thread, ThreadDirection direction, bool isShared, ThreadPlaces places, double yarnPerLength)
    {
        if (thread.Width <= Quantities.Length.Zero) throw new ArgumentException("Each thread of a cloth has a width.", nameof(thread));
        Dictionary<ThreadLook, int> known = _known[(direction == ThreadDirection.Warp ? 0 : 2) + (isShared ? 1 : 0)];
        if (known.TryGetValue(thread, out int number)) return number;
        number = _looks.Count / LookNumbers.PerLook;
        known[thread] = number;
        Lustre lustre = thread.Lustre;
        var colour = LinearColour.From(thread.Colour);
        double repeat = thread.Stretches.Sum(s => s.Length.Millimetres);
        double ply = thread.PlySpacing > Quantities.Length.Zero ? 1 / thread.PlySpacing.Millimetres * (thread.TwistRadians < 0 ? -1 : 1) : 0;
        LinearColour tint = lustre.IsMetal ? colour : new LinearColour(1, 1, 1);
        Add(colour.Red, colour.Green, colour.Blue, places.WidthOf(thread, isShared));
        Add(thread.Height.Millimetres, lustre.Fuzz, lustre.Slub, lustre.IsMetal ? 0.45 : 0);
        Add(ply, thread.Stretches.IsEmpty ? -1 : AddStretches(thread, repeat), thread.Stretches.IsEmpty ? 0 : yarnPerLength / repeat, lustre.IsPile ? 1 : 0);
        Add(tint.Red, tint.Green, tint.Blue, LightOf(lustre, direction, thread.TwistRadians));
        Add(Math.Min(MostWander, lustre.Slub * Wander) * places.Pitch, Streaks(lustre), Math.Tan(thread.TwistRadians), thread.BeginsAlike ? 1 : 0);
        Add(places.ShareOf(thread, isShared), 0, 0, 0);
        return number;
    }

    private static double Streaks(Lustre lustre) => lustre.IsPile || lustre.IsMetal ? 0 : 0.08 + 0.25 * lustre.Fuzz;

    private static Dictionary<ThreadLook, int> Fresh() => new(ReferenceEqualityComparer.Instance);

    private int LightOf(Lustre lustre, ThreadDirection direction, double twist)
    {
        int number = _lustres.IndexOf(lustre);
        if (number < 0)
        {
            number = _lustres.Count;
            _lustres.Add(lustre);
        }

        // Twists that differ by less than a degree shine alike.
        for (int i = 0; i < _lights.Count; i++)
        {
            if (_lights[i].Direction == direction && _lights[i].Lustre == number && Math.Abs(_lights[i].TwistRadians - twist) < 0.02) return i;
        }

        _lights.Add(new LightKind(direction, number, twist));
        return _lights.Count - 1;
    }

    // Dyes run into each other: the colours are softened over a fiftieth of the repeat.
    private int AddStretches(ThreadLook thread, double repeat)
    {
        const int Soft = LookNumbers.StretchSteps / 50;
        var sharp = new LinearColour[LookNumbers.StretchSteps];
        double at = 0;
        int step = 0;
        foreach (ColourStretch stretch in thread.Stretches)
        {
            at += stretch.Length.Millimetres;
            for (; step < sharp.Length && (step + 0.5) * repeat / sharp.Length < at; step++) sharp[step] = LinearColour.From(stretch.Colour);
        }

        for (; step < sharp.Length; step++) sharp[step] = sharp[step - 1];
        int row = _stretches.Count / (3 * LookNumbers.StretchSteps);
        for (int i = 0; i < sharp.Length; i++)
        {
            LinearColour sum = default;
            for (int d = -Soft; d <= Soft; d++) sum += sharp[(i + d + sharp.Length) % sharp.Length];
            sum *= 1.0 / (2 * Soft + 1);
            _stretches.AddRange([(float)sum.Red, (float)sum.Green, (float)sum.Blue]);
        }

        return row;
    }

    private void Add(params ReadOnlySpan<double> numbers)
    {
        foreach (double number in numbers) _looks.Add((float)number);
    }
}
