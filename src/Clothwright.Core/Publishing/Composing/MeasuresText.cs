using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>What to measure while weaving and after washing, with room to write.</summary>
internal static class MeasuresText
{
    /// <summary>The measures.</summary>
    public static ImmutableArray<HandoutBlock> Of(PlanResult plan)
    {
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        rows.Add(Row("Width in the reed", plan.ReedWidth));
        foreach (PiecePlan piece in plan.Pieces)
        {
            string name = piece.Piece.Name;
            rows.Add(Row($"{Words.Sentence(name)}: {Words.CountedPicks(piece)} on the loom{Words.EachLayer(piece)}", piece.GroundPicksUnderTension));
            rows.Add(Row($"{Words.Sentence(name)}: length under tension", piece.LengthUnderTension));
            rows.Add(Row($"{Words.Sentence(name)}: length off the loom", piece.OffLoomLength));
            rows.Add(Row($"{Words.Sentence(name)}: width washed", piece.FinishedWidth));
            rows.Add(Row($"{Words.Sentence(name)}: length washed", piece.FinishedLength));
        }

        rows.Add(Row("Mass of the washed cloth per area", plan.MassPerArea));
        rows.Add(Row("Hours at work", plan.Work.Total));
        rows.Add(new TableRow(["Lots of the yarns", "", ""]));
        rows.Add(new TableRow(["Begun, cut off, washed", "", ""]));
        return
        [
            new ParagraphBlock("Write down what you find. The next plan with these yarns reckons with your figures instead of those of the trade."),
            new TableBlock([new TableColumn("What"), new TableColumn("Expected"), new TableColumn("Found") { IsBlank = true }], rows.ToImmutable()),
        ];
    }

    private static TableRow Row(string what, IDerived expected) => new([what, Words.Both(expected), ""]);
}
