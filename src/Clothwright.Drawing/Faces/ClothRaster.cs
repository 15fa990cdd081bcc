using Clothwright.Core.Colours;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Faces;

/// <summary>Turns one side of a cloth into pixels: each pixel is the mean light of what it covers.</summary>
internal static class ClothRaster
{
    /// <summary>The pixels, row by row from the top, three bytes each.</summary>
    /// <param name="side">The side of the cloth.</param>
    /// <param name="width">Pixels across, at least 1.</param>
    /// <param name="height">Pixels down, at least 1.</param>
    public static byte[] Render(ClothSide side, int width, int height)
    {
        PixelSpans columns = PixelSpans.Divide(side.Across, side.Width, width, side.IsTurned);
        PixelSpans rows = PixelSpans.Divide(side.Along, side.Height, height, reversed: true);
        double dotsPerThread = Math.Min(
            side.Across.Edges[^1] / side.Across.Count / side.Width * width,
            side.Along.Edges[^1] / side.Along.Count / side.Height * height);
        var painter = new Painter(side, new ThreadShade(dotsPerThread));
        byte[] pixels = new byte[width * height * 3];
        Parallel.For(0, height, y =>
        {
            for (int x = 0; x < width; x++)
            {
                SrgbColour colour = painter.Mean(columns[x], rows[y]).ToSrgb();
                int at = (y * width + x) * 3;
                pixels[at] = colour.Red;
                pixels[at + 1] = colour.Green;
                pixels[at + 2] = colour.Blue;
            }
        });

        return pixels;
    }

    private sealed class Painter(ClothSide side, ThreadShade shade)
    {
        private static readonly LinearColour Ground = LinearColour.From(Palette.Linen);
        private readonly LinearColour[] _ends = [.. Enumerable.Range(0, side.Across.Count).Select(e => LinearColour.From(side.EndColour(e)))];
        private readonly LinearColour[] _picks = [.. Enumerable.Range(0, side.Along.Count).Select(p => LinearColour.From(side.PickColour(p)))];

        public LinearColour Mean(ReadOnlySpan<PixelSpans.Span> columns, ReadOnlySpan<PixelSpans.Span> rows)
        {
            LinearColour sum = default;
            foreach (PixelSpans.Span row in rows)
            {
                foreach (PixelSpans.Span column in columns) sum += Light(row, column) * (row.Share * column.Share);
            }

            return sum;
        }

        private LinearColour Light(PixelSpans.Span row, PixelSpans.Span column)
        {
            int end = column.Thread;
            int pick = row.Thread;
            if (end == PixelSpans.Gap && pick == PixelSpans.Gap) return Ground;
            if (end == PixelSpans.Gap) return _picks[pick] * shade.Light(row.Across, 0.5);
            if (pick == PixelSpans.Gap) return _ends[end] * shade.Light(column.Across, 0.5);
            if (side.WarpOnTop(pick, end)) return _ends[end] * shade.Light(column.Across, AlongWarp(pick, end, row.Across));
            return _picks[pick] * shade.Light(row.Across, AlongWeft(pick, end, column.Across));
        }

        // The shadow falls only where the thread dives under at the next crossing.
        private double AlongWarp(int pick, int end, double along)
        {
            int next = along < 0.5 ? pick - 1 : pick + 1;
            return next >= 0 && next < _picks.Length && !side.WarpOnTop(next, end) ? along : 0.5;
        }

        private double AlongWeft(int pick, int end, double along)
        {
            int next = along < 0.5 ? end - 1 : end + 1;
            return next >= 0 && next < _ends.Length && side.WarpOnTop(pick, next) ? along : 0.5;
        }
    }
}
