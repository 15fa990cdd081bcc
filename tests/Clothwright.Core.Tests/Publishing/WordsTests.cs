using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Publishing.Composing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;

namespace Clothwright.Core.Tests.Publishing;

public class WordsTests
{
    [Theory]
    [InlineData(1, "once")]
    [InlineData(2, "twice")]
    [InlineData(48, "48 times")]
    public void How_often_is_said_as_weavers_say_it(int times, string expected) => Assert.Equal(expected, Words.Times(times));

    [Fact]
    public void Lists_end_with_and()
    {
        Assert.Equal("", Words.List([]));
        Assert.Equal("1", Words.List(["1"]));
        Assert.Equal("1, 2 and 3", Words.List(["1", "2", "3"]));
    }

    [Fact]
    public void A_length_is_said_in_both_units_and_a_count_once()
    {
        Assert.Equal("21.0 cm (8.27 in)", Words.Both(Length.FromCentimetres(21)));
        Assert.Equal("1 pick", Words.Of(1, "pick"));
        Assert.Equal("4 picks", Words.Of(4, "pick"));
    }

    [Theory]
    [InlineData("2", "2 ends in each dent")]
    [InlineData("1", "1 end in each dent")]
    [InlineData("1-1-2", "1, 1 and 2 ends to a dent in turn, over and over")]
    public void The_sley_is_said_dent_by_dent(string sley, string expected) => Assert.Equal(expected, SleyWords.Order(Sley.Parse(sley).Value));

    [Theory]
    [InlineData(1, PieceKind.Scarf, "one scarf")]
    [InlineData(2, PieceKind.Scarf, "two scarves")]
    [InlineData(3, PieceKind.GarmentPanel, "three garment panels")]
    [InlineData(13, PieceKind.Yardage, "13 lengths of cloth")]
    public void Pieces_are_counted_in_words(int count, PieceKind kind, string expected) => Assert.Equal(expected, PieceWords.Several(count, kind));
}
