using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Yarns;

public class YarnSearchTests
{
    private static readonly Yarn[] Shelf =
    [
        EstuaryYarns.Bamboo with { Name = "tide blue", Colour = new SrgbColour(0x2f, 0x5f, 0x77), Packages = [EstuaryYarns.Cone(200, lot: "B7")] },
        EstuaryYarns.Merino with { Name = "samphire", Colour = new SrgbColour(0x7d, 0x7a, 0x35) },
        EstuaryYarns.Linen with { Name = "driftwood", Colour = new SrgbColour(0xb8, 0xa8, 0x90) },
    ];

    [Theory]
    [InlineData("", "tide blue,samphire,driftwood")]
    [InlineData("blue", "tide blue")]
    [InlineData("BAMBOO tide", "tide blue")]
    [InlineData("flax", "driftwood")]
    [InlineData("b7", "tide blue")]
    [InlineData("spun", "tide blue,samphire,driftwood")]
    [InlineData("heron", "")]
    public void Words_are_sought_in_name_fibre_make_and_lot(string words, string found) =>
        Assert.Equal(found, Names(new YarnQuery { Words = words }));

    [Fact]
    public void A_fibre_is_sought() => Assert.Equal("samphire", Names(new YarnQuery { FibreId = "merino" }));

    [Fact]
    public void A_range_of_counts_is_sought() =>
        // 8/2 cotton 147.6 tex, 2/28 metric 71.4 tex, 16/2 linen 206.7 tex (ASTM D2260 factors).
        Assert.Equal("tide blue,driftwood", Names(new YarnQuery { Finest = LinearDensity.FromTex(100), Thickest = LinearDensity.FromTex(250) }));

    [Fact]
    public void The_nearest_colour_comes_first_and_far_ones_are_left_out()
    {
        var near = new SrgbColour(0x30, 0x60, 0x78);
        Assert.StartsWith("tide blue,", Names(new YarnQuery { Near = near }), StringComparison.Ordinal);
        Assert.Equal("tide blue", Names(new YarnQuery { Near = near, MostDifferent = 5 }));
        Assert.InRange(YarnSearch.Find(Shelf, new YarnQuery { Near = near })[0].Difference!.Value, 0.01, 1);
    }

    [Theory]
    [InlineData("8/2 bamboo, tide blue", "8-2-bamboo-tide-blue")]
    [InlineData("Möwe 2", "möwe-2")]
    [InlineData("…", "yarn")]
    public void A_name_gives_an_id(string name, string id) => Assert.Equal(id, ShelfId.Of(name, _ => false));

    [Fact]
    public void An_id_that_is_taken_gets_a_number() => Assert.Equal("tide-blue-3", ShelfId.Of("tide blue", id => id is "tide-blue" or "tide-blue-2"));

    private static string Names(YarnQuery query) => string.Join(',', YarnSearch.Find(Shelf, query).Select(m => m.Yarn.Name));
}
