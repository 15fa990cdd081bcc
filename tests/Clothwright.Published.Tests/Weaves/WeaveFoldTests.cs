using System.Globalization;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Published.Tests.Weaves;

public class WeaveFoldTests
{
    private const string Table = "weave-folds";

    public static TheoryData<string> Ids => WeaveTables.Ids(Table);

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_shuttle_joins_the_layers_and_doubles_ends_at_these_folds(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        Draft draft = DraftNotation.Parse(row["draft"]).Value;
        int ends = int.Parse(row["ends"], CultureInfo.InvariantCulture);
        EdgeChange drop = row["drop"] switch
        {
            "none" => EdgeChange.None,
            "first" => EdgeChange.DropFirst,
            "last" => EdgeChange.DropLast,
            _ => throw new InvalidDataException($"Row {id} drops the {row["drop"]} end."),
        };
        Drawdown cloth = EdgeChanges.Changed(draft.Repeated(ends, draft.Picks).Drawdown(), drop);
        LayerJoins joins = LayerJoins.Of(cloth, Enum.Parse<ClothSide>(row["start"], ignoreCase: true), ThreadOrder.Parse(row["shuttles"]).Value);

        Assert.Equal(row["form"], joins.Form.ToString());
        Assert.Equal(row["joins"], TextOr("none", string.Join("; ", joins.Joins.Select(j => $"{j.Upper + 1}-{j.Lower + 1} {Side(j.Side)}"))));
        ClothSide[] faulty = [.. joins.Faults.Select(f => f.Turn.Side).Distinct().Order()];
        Assert.Equal(row["faults"], TextOr("none", string.Join(' ', faulty.Select(Side))));

        // Every fold on a faulty side is at fault.
        Assert.All(joins.Folds, f => Assert.Equal(faulty.Contains(f.Turn.Side), f.IsFault));
    }

    private static string Side(ClothSide side) => side == ClothSide.Left ? "left" : "right";

    private static string TextOr(string none, string text) => text.Length == 0 ? none : text;
}
