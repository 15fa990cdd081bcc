using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Drafts;
using Clothwright.Drawing.Figures;
using SkiaSharp;

namespace Clothwright.Drawing.Pdf;

/// <summary>The colour order of the warp.</summary>
internal sealed partial class HandoutFlow
{
    private const float StripHeight = 16;

    private void AddWinding(WindingBlock block)
    {
        if (block.Turns.IsEmpty) return;
        int ends = block.Turns[^1].LastEnd;
        AddPicture(StripHeight + 2, (canvas, x, y) => DrawStripes(canvas, block, ends, x, y), "", keepWithNext: true);
        _blockSpace = 6;
        ImmutableArray<TableRow>.Builder rows = ImmutableArray.CreateBuilder<TableRow>();
        foreach (ThreadGroup group in ThreadRepeats.Find(block.Turns.Length, (a, b) => Alike(block.Turns[a], block.Turns[b]), leastSaving: 2))
        {
            string times = group.Times == 1 ? "" : group.Period == 1
                ? string.Create(CultureInfo.InvariantCulture, $"{group.Times} times")
                : string.Create(CultureInfo.InvariantCulture, $"these {group.Period} rows {group.Times} times over");
            for (int i = 0; i < group.Period; i++)
            {
                WindingTurn turn = block.Turns[group.First + i];
                int last = block.Turns[group.First + group.Count - group.Period + i].LastEnd;
                string numbers = turn.FirstEnd == last ? Whole(turn.FirstEnd) : $"{Whole(turn.FirstEnd)} to {Whole(last)}";
                if (group.Times > 1) numbers = i == 0 ? $"{Whole(turn.FirstEnd)} to {Whole(block.Turns[group.First + group.Count - 1].LastEnd)}" : "";
                string repeat = times.Length == 0 ? "" : i == 0 ? times : "as above";
                rows.Add(new TableRow([turn.Yarn, Whole(turn.Ends), numbers, repeat], turn.Colour));
            }
        }

        AddTable(new TableBlock(
            [new TableColumn("Yarn, in winding order"), new TableColumn("Ends", true), new TableColumn("End numbers", true), new TableColumn(rows.Any(r => r.Cells[3].Length > 0) ? "Repeat" : "")],
            rows.ToImmutable()));
    }

    private void DrawStripes(SKCanvas canvas, WindingBlock block, int ends, float x, float y)
    {
        foreach (WindingTurn turn in block.Turns)
        {
            float from = (turn.FirstEnd - 1) * width / ends;
            PageInk.Fill(canvas, x + from, y, turn.Ends * width / ends, StripHeight, turn.Colour);
        }

        using var outline = new SKPaint { Style = SKPaintStyle.Stroke, StrokeWidth = 0.5f, IsAntialias = true, Color = FigureCanvas.ToSkia(Palette.Ink) };
        canvas.DrawRect(x, y, width, StripHeight, outline);
    }

    private static bool Alike(WindingTurn a, WindingTurn b) => a.Ends == b.Ends && a.Yarn == b.Yarn && a.Colour == b.Colour;

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
