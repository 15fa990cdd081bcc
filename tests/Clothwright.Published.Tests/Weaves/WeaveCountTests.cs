using System.Globalization;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Published.Tests.Weaves;

public class WeaveCountTests
{
    private const string Table = "weave-counts";

    public static TheoryData<string> Ids => WeaveTables.Ids(Table);

    [Theory]
    [MemberData(nameof(Ids))]
    public void So_many_weaves_of_a_size_have_the_property(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        int picks = int.Parse(row["picks"], CultureInfo.InvariantCulture);
        int ends = int.Parse(row["ends"], CultureInfo.InvariantCulture);
        string[] which = row["which"].Split(", ");
        Func<int, bool> first = which[^1] switch
        {
            "up to shifts" => code => WeaveCodes.IsFirstOfItsShifts(code, picks, ends, reversals: false),
            "up to shifts and reversals" => code => WeaveCodes.IsFirstOfItsShifts(code, picks, ends, reversals: true),
            _ => _ => true,
        };
        int found = Enumerable.Range(0, 1 << (picks * ends)).Count(code => first(code) && Has(which, WeaveCodes.Cloth(code, picks, ends)));

        Assert.Equal(int.Parse(row["expected"], CultureInfo.InvariantCulture), found);
    }

    [Fact]
    public void Equal_sums_both_ways_make_a_cloth_that_hangs_together()
    {
        // Every matrix up to 5 × 5 with equal sums of its picks and equal sums of its ends, neither none nor all: 4,484 of them,
        // counted by a program of its own, and all hang together.
        int found = 0;
        for (int picks = 1; picks <= 5; picks++)
        {
            for (int ends = 1; ends <= 5; ends++)
            {
                foreach (Drawdown cloth in WeaveCodes.EqualSums(picks, ends))
                {
                    found++;
                    Assert.True(ClothLayers.Of(cloth).HangsTogether, cloth.ToString());
                }
            }
        }

        Assert.Equal(4484, found);
    }

    private static bool Has(string[] which, Drawdown cloth) => which.All(w => w switch
    {
        "hang together" => ClothLayers.Of(cloth).HangsTogether,
        "falls apart" => !ClothLayers.Of(cloth).HangsTogether,
        "every thread interlaces" => WeaveCounts.Of(cloth).EveryThreadInterlaces,
        "up to shifts" or "up to shifts and reversals" => true,
        _ => throw new InvalidDataException($"No test knows \"{w}\"."),
    });
}
