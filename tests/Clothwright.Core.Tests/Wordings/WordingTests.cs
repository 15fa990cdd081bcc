using System.Globalization;
using Clothwright.Core.Wordings;

namespace Clothwright.Core.Tests.Wordings;

/// <summary>How what was said in English is told in another language.</summary>
public sealed class WordingTests
{
    private static readonly Wording German = Wording.Of("de");

    [Fact]
    public void English_is_told_as_it_was_said() => Assert.Equal("12 ends, each 4.92 m long", Wording.English.Tell("12 ends, each 4.92 m long"));

    [Fact]
    public void A_sentence_is_known_again_by_its_pattern_and_its_numbers_stay() =>
        Assert.Equal("Die Kette ist im Riet 52.3 cm breit, table-4 webt höchstens 40 cm.", German.Tell("The warp is 52.3 cm wide in the reed, table-4 weaves at most 40 cm."));

    [Fact]
    public void What_stands_in_a_place_is_told_in_its_turn() =>
        Assert.Equal("8.0 je cm ist offener, als Gewebe für diesen Zweck meist sind (9.0 je cm bis 10.0 je cm).", German.Tell("8.0 per cm is more open than cloth of this purpose usually is (9.0 per cm to 10.0 per cm)."));

    [Fact]
    public void What_a_person_typed_stays_as_it_was_typed() =>
        Assert.Equal("\"plain weave\" ist keine Farbe.", German.Tell("\"plain weave\" is not a colour."));

    [Fact]
    public void Names_that_no_table_knows_stay() =>
        Assert.Equal("Tide blue 8/2, Masse je Länge", German.Tell("Tide blue 8/2, mass per length"));

    [Fact]
    public void Sentences_one_after_another_are_told_one_by_one() =>
        Assert.Equal("Leg mindestens eines hinein. Noch ist nichts gewebt: ziehe ihn einfach neu ein.", German.Tell("Put at least one yarn on it. Nothing is woven yet: simply re-thread it."));

    [Fact]
    public void A_list_is_told_thing_by_thing() =>
        Assert.Equal("Leinen, Seide und Köper 2/2", German.Tell("linen, silk and 2/2 twill"));

    [Fact]
    public void A_word_is_chosen_by_what_stands_in_the_place() =>
        Assert.Equal("Zusammenzug der straffsten Schüsse", German.Tell("contraction of the tightest picks"));

    [Theory]
    [InlineData("8.0 per cm", "8.0 je cm")]
    [InlineData("20.3 per inch", "20.3 je Zoll")]
    [InlineData("4.92 m", "4.92 m")]
    [InlineData("1.97 in", "1.97 Zoll")]
    [InlineData("194", "194")]
    public void Quantities_keep_their_numbers_and_units(string said, string told) => Assert.Equal(told, German.Tell(said));

    [Theory]
    [InlineData("20.3 je Zoll")]
    [InlineData("20.3 pro Zoll")]
    public void Setts_are_read_as_they_are_told(string told) => Assert.Equal(20.3, Core.Quantities.SettText.Parse(told).Value.PerInch, 1e-9);

    [Fact]
    public void A_title_of_which_the_tables_know_half_stays_whole() =>
        Assert.Equal("a book on linen and silk", German.TellWhole("a book on linen and silk"));

    [Fact]
    public void A_language_without_tables_is_refused() => Assert.Throws<ArgumentException>(() => Wording.Of("xx"));

    [Fact]
    public void Of_two_readings_the_one_that_leaves_less_unknown_is_told()
    {
        Wording wording = Wording.From("xx", [("{0} of {1}", "{1}-{0}"), ("end of {0} of warp", "K{0}"), ("two", "2"), ("length", "L")]);
        Assert.Equal("K2", wording.Tell("end of two of warp"));
        Assert.Equal("2-L", wording.Tell("length of two"));
    }

    [Fact]
    public void Every_pattern_is_known_again_with_numbers_in_its_places()
    {
        string[] lost =
        [
            .. from entry in WordingTables.Of("de")
               where Placed.Cut(entry.Said).Places.Count > 0
               let said = Filled(entry.Said)
               where German.Unknown(said) > 0
               select said,
        ];
        Assert.Empty(lost);
    }

    private static string Filled(string pattern)
    {
        (List<string> words, List<string> places) = Placed.Cut(pattern);
        return words[0] + string.Concat(places.Select((_, i) => (17 + i).ToString(CultureInfo.InvariantCulture) + words[i + 1]));
    }
}
