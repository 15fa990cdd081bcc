using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class QuickYarnTests
{
    private static readonly string[] Parts = ["8/2 bamboo", "200 g cone", "tide blue", "3 left", "lot 7", "€18.50"];

    [Fact]
    public void Words_written_in_a_hurry_become_a_yarn_and_each_part_says_where_it_was_read()
    {
        QuickYarn yarn = Read("8/2 bamboo, 200 g cone, tide blue, 3 left");

        Assert.Equal((YarnCount.Of(CountSystem.Cotton, 8, 2), "8/2", QuickCountGround.CustomOfTheFibre), (yarn.Count!.Taken, yarn.Count.From, yarn.Count.Ground));
        Assert.Equal(("bamboo-viscose", "bamboo"), (yarn.Fibres!.Value.Shares[0].Fibre.Id, yarn.Fibres.From));
        Assert.Equal((PackageForm.Cone, "cone"), (yarn.Form.Value, yarn.Form.From));
        Assert.Equal((200, "200 g"), (yarn.PackageMass!.Value.Grams, yarn.PackageMass.From));
        Assert.Equal((3, "3 left"), (yarn.Packages.Value, yarn.Packages.From));
        Assert.Equal(("tide blue", "tide blue"), (yarn.ColourName!.Value, yarn.ColourName.From));
        Assert.Equal("blue", yarn.Colour.From);
        Assert.True(yarn.Construction.IsAssumed);
        Assert.False(yarn.HasToAsk);
    }

    [Theory]
    [InlineData("8/2", "cotton,worsted,metric,linen,silk-english")]
    [InlineData("2/8 wool 200 g", "cotton,worsted,metric,linen,silk-english")]
    public void A_count_that_several_systems_use_is_asked(string words, string systems)
    {
        QuickYarn yarn = Read(words);
        Assert.Equal(QuickCountGround.ToBeAsked, yarn.Count!.Ground);
        Assert.Null(yarn.Count.Taken);
        Assert.True(yarn.HasToAsk);
        Assert.Equal(systems.Split(',').Order(), yarn.Count.Readings.Select(r => r.System.Definition().Name).Order());
    }

    // The systems in which the trade sells these fibres: common practice, no source.
    [Theory]
    [InlineData("8/2 cotton", CountSystem.Cotton, 8, 2)]
    [InlineData("6/2 cotton, reed green", CountSystem.Cotton, 6, 2)]
    [InlineData("16/2 linen", CountSystem.Linen, 16, 2)]
    [InlineData("16/1 hemp, undyed", CountSystem.Linen, 16, 1)]
    [InlineData("2/18 merino", CountSystem.Worsted, 18, 2)]
    [InlineData("2/28 merino", CountSystem.Metric, 28, 2)]
    [InlineData("8/2 Baumwolle, 3 Konen zu 200 g", CountSystem.Cotton, 8, 2)]
    public void The_fibre_makes_the_system_sure(string words, CountSystem system, double number, int plies)
    {
        QuickCount count = Read(words).Count!;
        Assert.Equal((QuickCountGround.CustomOfTheFibre, YarnCount.Of(system, number, plies)), (count.Ground, count.Taken));
    }

    [Theory]
    [InlineData("Nm 28/2 wool", CountSystem.Metric)]
    [InlineData("28/2 Nm wool", CountSystem.Metric)]
    [InlineData("20/2 worsted count, wool", CountSystem.Worsted)]
    [InlineData("150 den polyester", CountSystem.Denier)]
    [InlineData("R 60 tex/2 wool", CountSystem.Tex)]
    [InlineData("NeL 16/2 tow linen", CountSystem.Linen)]
    public void A_system_that_is_named_is_taken(string words, CountSystem system)
    {
        QuickCount count = Read(words).Count!;
        Assert.Equal((QuickCountGround.Named, system), (count.Ground, count.Taken!.System));
    }

    [Theory]
    [InlineData("wool 80 %, silk 20 %", "80 % wool-worsted, 20 % silk-spun")]
    [InlineData("80 % wool 20 % silk, dusk", "80 % wool-worsted, 20 % silk-spun")]
    [InlineData("22/2 cotton linen 60/40", "60 % cotton, 40 % linen")]
    [InlineData("50/50 merino/silk 2/30", "50 % merino, 50 % silk-spun")]
    [InlineData("70% alpaca, nylon", "70 % alpaca, 30 % nylon")]
    [InlineData("spun silk 60/2", "silk-spun")]
    [InlineData("reeled silk", "silk-reeled")]
    [InlineData("merino worsted 2/20", "merino")]
    [InlineData("viscose from bamboo", "bamboo-viscose")]
    [InlineData("Bambus", "bamboo-viscose")]
    public void Fibres_are_read_with_their_shares(string words, string blend)
    {
        QuickYarn yarn = Read(words);
        Assert.Equal(FibreBlend.Parse(blend).Value, yarn.Fibres!.Value);
        Assert.False(yarn.SharesAreGuessed);
    }

    [Theory]
    [InlineData("cotton linen 22/2")]
    [InlineData("wool 80 %, silk 80 %")]
    public void Shares_that_are_not_told_are_asked(string words) => Assert.True(Read(words) is { SharesAreGuessed: true, HasToAsk: true });

    [Theory]
    [InlineData("5 skeins of 100 g merino", 5, 100, PackageForm.Skein)]
    [InlineData("3 x 200 g cones 8/2 cotton", 3, 200, PackageForm.Cone)]
    [InlineData("half a cone left, 8 oz cone, 8/2 cotton", 0.5, 226.796185, PackageForm.Cone)]
    [InlineData("1/2 lb tube, 2.5 left", 2.5, 226.796185, PackageForm.Tube)]
    [InlineData("2,5 Spulen übrig, 200 g", 2.5, 200, PackageForm.Tube)]
    [InlineData("two balls left, 50 g", 2, 50, PackageForm.Ball)]
    [InlineData("3 Konen zu 200 g", 3, 200, PackageForm.Cone)]
    public void Packages_are_counted(string words, double packages, double grams, PackageForm form)
    {
        QuickYarn yarn = Read(words);
        // Ounce and pound by definition (1959): 1 oz = 28.349523125 g.
        Assert.Equal(grams, yarn.PackageMass!.Value.Grams, 6);
        Assert.Equal((packages, form), (yarn.Packages.Value, yarn.Form.Value));
    }

    [Fact]
    public void A_label_tells_count_and_package()
    {
        QuickYarn yarn = Read("wool, 400 m / 100 g skein, dye lot 47-B, heather, €12.50 a skein");
        Assert.Equal(250, yarn.Label!.Value.Tex, 6);
        Assert.Equal(100, yarn.PackageMass!.Value.Grams);
        Assert.Equal(("47-B", "dye lot 47-B"), (yarn.Lot!.Value, yarn.Lot.From));
        Assert.Equal(12.5, yarn.Price!.Value.Amount);
        Assert.Equal("heather", yarn.ColourName!.Value);
        Assert.Null(yarn.Count);
    }

    [Fact]
    public void A_length_per_pound_is_no_package() => Assert.Null(Read("chenille, 1450 yd/lb, rayon").PackageMass);

    [Theory]
    [InlineData("chenille, 1450 yd/lb, rayon", YarnConstruction.Chenille)]
    [InlineData("16/1 linen", YarnConstruction.Singles)]
    [InlineData("mohair bouclé", YarnConstruction.Boucle)]
    [InlineData("8/2 cotton", YarnConstruction.Spun)]
    public void The_make_is_read(string words, YarnConstruction construction) => Assert.Equal(construction, Read(words).Construction.Value);

    [Theory]
    [InlineData("8/2 cotton #2f5f77", "#2f5f77", "#2f5f77")]
    [InlineData("8/2 cotton, marsh green", "#4f7a3a", "green")]
    [InlineData("8/2 Baumwolle, Schlick grau", "#8a8d8f", "grau")]
    [InlineData("8/2 cotton, fog", "#e9dfc9", "")]
    public void The_colour_is_given_or_guessed_from_its_word(string words, string colour, string from)
    {
        QuickYarn yarn = Read(words);
        Assert.Equal((colour, from), (yarn.Colour.Value.ToString(), yarn.Colour.From));
    }

    [Fact]
    public void Too_little_and_too_much_are_refused()
    {
        Assert.Equal("Nothing was written.", QuickYarn.Read("  ").Problem!.What);
        Assert.Contains("401", QuickYarn.Read(new string('a', 401)).Problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_words_are_read_without_a_slip() => Gen.String[Gen.OneOf(Gen.Char, Gen.Char[" 0123456789/,.%€#gxkmoz½'"]), 0, 80].Sample(words =>
    {
        if (!QuickYarn.Read(words).TryGet(out QuickYarn? yarn)) return;
        Assert.All(new[] { yarn.Count?.From, yarn.Fibres?.From, yarn.ColourName?.From, yarn.Lot?.From, yarn.Price?.From }.OfType<string>(), from => Assert.NotEmpty(from));
        YarnEntry.FromWords(yarn, "any");
    });

    [Fact]
    public void Parts_may_stand_in_any_order() => Gen.Shuffle(Parts).Sample(parts =>
    {
        QuickYarn yarn = Read(string.Join(", ", parts));
        Assert.Equal((3, 200, "tide blue", "7", 18.5), (yarn.Packages.Value, yarn.PackageMass!.Value.Grams, yarn.ColourName!.Value, yarn.Lot!.Value, yarn.Price!.Value.Amount));
        Assert.Equal(CountSystem.Cotton, yarn.Count!.Taken!.System);
    });

    [Fact]
    public void What_was_told_stands_on_the_shelf_as_told()
    {
        YarnEntry entry = YarnEntry.FromWords(Read("8/2 bamboo, 200 g cone, tide blue, 2.5 left, lot 7, 18.50 € each"), "tide-blue");
        Assert.Equal(("8/2 bamboo, tide blue", "8/2", "cotton"), (entry.Name, entry.Count, entry.CountSystem));
        Assert.Equal([200, 200, 100], entry.Packages.Select(p => Math.Round(p.GrossMass.Grams, 6)));
        Assert.All(entry.Packages, p => Assert.Equal((MassBasis.Told, "7"), (p.Basis, p.Lot)));
        Assert.Equal((200, 18.5), (Math.Round(entry.Offer!.NetMass.Grams, 6), entry.Offer.Price.Amount));
        Yarn yarn = entry.ToYarn().Value;

        // 500 g of 147.635 tex (8/2 cotton: 590.541 / 4, ASTM D2260) are 3386.7 m; a label's mass is not corrected for the room.
        Assert.Equal(500_000 / 147.6353, StockReckoning.LengthOnShelf(yarn).Value.Metres, 0.1);
    }

    [Fact]
    public void A_rest_that_is_told_is_one_package()
    {
        YarnEntry entry = YarnEntry.FromWords(Read("8/2 cotton, 200 g cone, 120 g left"), "rest");
        Assert.Equal(120, Assert.Single(entry.Packages).GrossMass.Grams, 6);
    }

    private static QuickYarn Read(string words) => QuickYarn.Read(words).Value;
}
