using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Charts;
using Clothwright.Drawing.Drafts;

namespace Clothwright.Drawing.Pdf;

/// <summary>The colour order of the warp.</summary>
internal sealed partial class HandoutFlow
{
    private void AddWinding(WindingBlock block)
    {
        if (block.Turns.IsEmpty) return;
        AddFigure(WindingStrip.Draw(block.Turns, width), wording.Tell("The colours of the warp from end 1 at the left; the table below has the same order."), "", keepWithNext: true);
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
                rows.Add(new TableRow([turn.Yarn, Whole(turn.Ends), wording.Tell(numbers), wording.Tell(repeat)], turn.Colour));
            }
        }

        AddTable(new TableBlock(
            [new TableColumn(wording.Tell("Yarn, in winding order")), new TableColumn(wording.Tell("Ends"), true), new TableColumn(wording.Tell("End numbers"), true), new TableColumn(rows.Any(r => r.Cells[3].Length > 0) ? wording.Tell("Repeat") : "")],
            rows.ToImmutable()));
    }

    private static bool Alike(WindingTurn a, WindingTurn b) => a.Ends == b.Ends && a.Yarn == b.Yarn && a.Colour == b.Colour;

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
