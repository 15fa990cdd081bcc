using System.Globalization;
using Clothwright.Core.Weaves;

namespace Clothwright.Published.Tests.Weaves;

public class WeaveAlgebraTests
{
    private const string Table = "weave-algebra";

    public static TheoryData<string> Ids => WeaveTables.Ids(Table);

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_rule_gives_what_the_table_says(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        string text = row["draft or drawdown"];
        Draft Given() => DraftNotation.Parse(text).Value;
        string found = row["rule"] switch
        {
            "drawdown" => Given().Drawdown().ToString(),
            "on a sinking shed" => OnSinkingShed(Given()),
            "turned" => Given().Turned().Drawdown().ToString(),
            "turned clockwise" => Given().TurnedClockwise().Drawdown().ToString(),
            "other face" => Given().OtherFace().Drawdown().ToString(),
            "fewest shafts" => FewestDraft.Of(Drawdown.Parse(text).Value).Value.Shafts.ToString(CultureInfo.InvariantCulture),
            _ => throw new InvalidDataException($"Row {id} names no rule that is tested: {row["rule"]}."),
        };

        Assert.Equal(row["expected"], found);
    }

    private static string OnSinkingShed(Draft draft)
    {
        Draft sinking = draft.OnSinkingShed();
        Assert.False(sinking.RisingShed);
        return sinking.Drawdown().ToString();
    }
}
