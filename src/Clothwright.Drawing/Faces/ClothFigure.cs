using System.Collections.Immutable;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Faces;

/// <summary>Lays out a side of a cloth as a figure of plain rectangles, so that it prints sharp at any size.</summary>
/// <remarks>Warp first, as long strips; over it each float of the weft from where it comes up to where it goes down.</remarks>
internal static class ClothFigure
{
    private const double PointsPerMetre = 72 / 0.0254;

    /// <summary>The side of the cloth at true size.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="face">The side.</param>
    /// <param name="frame">How much of it.</param>
    public static Figure Draw(LookDescription cloth, Face face, ClothFrame frame)
    {
        var side = new ClothSide(cloth, face, frame);
        float width = Points(side.Width);
        float height = Points(side.Height);
        var marks = new List<Mark> { new BoxesMark("ground", [new Box(0, 0, width, height)], Palette.Linen) };
        var warp = new Dictionary<SrgbColour, List<Box>>();
        var weft = new Dictionary<SrgbColour, List<Box>>();
        for (int end = 0; end < side.Across.Count; end++) Add(warp, side.EndColour(end), Across(side, end, end, 0, side.Height));
        for (int pick = 0; pick < side.Along.Count; pick++)
        {
            foreach ((int first, int last) in WeftFloats(side, pick))
            {
                Add(weft, side.PickColour(pick), WeftBox(side, pick, first, last));
            }
        }

        AddThreads(marks, "warp", warp, upright: true);
        AddThreads(marks, "weft", weft, upright: false);
        string name = face == Face.Front ? "Front of the cloth" : "Back of the cloth";
        return new Figure(width, height, name, [.. marks.Select(m => Clip(m, width, height))]);
    }

    // Runs of neighbouring ends over which the weft floats.
    private static IEnumerable<(int First, int Last)> WeftFloats(ClothSide side, int pick)
    {
        int first = -1;
        for (int end = 0; end < side.Across.Count; end++)
        {
            if (!side.WarpOnTop(pick, end))
            {
                if (first < 0) first = end;
                continue;
            }

            if (first >= 0) yield return (first, end - 1);
            first = -1;
        }

        if (first >= 0) yield return (first, side.Across.Count - 1);
    }

    // A float reaches to the next end that lies on top of it, across the gap.
    private static Box WeftBox(ClothSide side, int pick, int first, int last)
    {
        double from = first == 0 ? 0 : side.Across.End(first - 1);
        double to = last == side.Across.Count - 1 ? side.Across.Edges[^1] : side.Across.Start(last + 1);
        return Place(side, from, to, side.Along.Start(pick), side.Along.End(pick));
    }

    private static Box Across(ClothSide side, int first, int last, double from, double to) =>
        Place(side, side.Across.Start(first), side.Across.End(last), from, to);

    private static Box Place(ClothSide side, double left, double right, double bottom, double top)
    {
        if (side.IsTurned) (left, right) = (side.Width - right, side.Width - left);
        return new Box(Points(left), Points(side.Height - top), Points(right - left), Points(top - bottom));
    }

    private static void Add(Dictionary<SrgbColour, List<Box>> boxes, SrgbColour colour, Box box)
    {
        if (!boxes.TryGetValue(colour, out List<Box>? list)) boxes[colour] = list = [];
        list.Add(box);
    }

    // Each thread in its own colour, with a darker line along both edges.
    private static void AddThreads(List<Mark> marks, string name, Dictionary<SrgbColour, List<Box>> threads, bool upright)
    {
        foreach ((SrgbColour colour, List<Box> boxes) in threads.OrderBy(t => t.Key.ToString(), StringComparer.Ordinal))
        {
            marks.Add(new BoxesMark(name, [.. boxes], colour));
            marks.Add(new BoxesMark($"{name}-edge", [.. boxes.SelectMany(b => Edges(b, upright))], (LinearColour.From(colour) * 0.55).ToSrgb()));
        }
    }

    private static ImmutableArray<Box> Edges(Box box, bool upright)
    {
        float width = (upright ? box.Width : box.Height) * 0.11f;
        return upright
            ? [box with { Width = width }, box with { X = box.X + box.Width - width, Width = width }]
            : [box with { Height = width }, box with { Y = box.Y + box.Height - width, Height = width }];
    }

    // Threads cut at the edge of the picture.
    private static Mark Clip(Mark mark, float width, float height) => mark is not BoxesMark boxes ? mark : boxes with
    {
        Boxes = [.. boxes.Boxes.Select(b => Cut(b, width, height)).Where(b => b.Width > 0 && b.Height > 0)],
    };

    private static Box Cut(Box box, float width, float height)
    {
        float left = Math.Clamp(box.X, 0, width);
        float right = Math.Clamp(box.X + box.Width, 0, width);
        float top = Math.Clamp(box.Y, 0, height);
        float bottom = Math.Clamp(box.Y + box.Height, 0, height);
        return new Box(left, top, right - left, bottom - top);
    }

    private static float Points(double metres) => (float)(metres * PointsPerMetre);
}
