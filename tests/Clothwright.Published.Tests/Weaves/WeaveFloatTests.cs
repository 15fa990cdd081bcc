using System.Globalization;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Published.Tests.Weaves;

public class WeaveFloatTests
{
    private const string Table = "weave-floats";

    public static TheoryData<string> Ids => WeaveTables.Ids(Table);

    [Theory]
    [MemberData(nameof(Ids))]
    public void There_are_so_many_floats_of_each_length(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        Draft draft = DraftNotation.Parse(row["draft"]).Value;
        Drawdown cloth = draft.Repeated(int.Parse(row["ends"], CultureInfo.InvariantCulture), draft.Picks).Drawdown();
        ClothFloats floats = ClothFloats.Of(cloth, ClothReading.Repeat);
        string found = row["measure"] switch
        {
            "warp face" => Text(floats.WarpFace),
            "warp back" => Text(floats.WarpBack),
            "weft face" => Text(floats.WeftFace),
            "weft back" => Text(floats.WeftBack),
            "changes" => string.Join(' ', WeaveCounts.Of(cloth).TransitionsPerPick.Distinct()),
            _ => throw new InvalidDataException($"Row {id} measures {row["measure"]}, which is not tested."),
        };

        Assert.Equal(row["expected"], found);
    }

    private static string Text(FloatTally tally) => string.Join(' ', tally.Counts.Select(c => $"{c.Length}:{c.Times}"));
}
