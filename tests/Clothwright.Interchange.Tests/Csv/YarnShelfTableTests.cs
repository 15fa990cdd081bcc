using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Csv;

namespace Clothwright.Interchange.Tests.Csv;

public sealed class YarnShelfTableTests
{
    private const string Shelf = """
        id,name,linear_density_tex,fibres,construction,colour,gross_mass_g,tare_g,package_form,lot,offer_net_mass_g,offer_price
        tide-blue,"8/2 cotton, tide blue",148,cotton,spun,#3b7a78,250.5,30,cone,A7,227,18.5
        tide-blue,,,,,,90,0,ball,B1,,
        marsh,,60,"80 % wool, 20 % silk",singles,,,,,,,
        """;

    [Fact]
    public void A_yarn_has_a_row_for_each_package()
    {
        ImmutableArray<Yarn> yarns = YarnShelfTable.Read(Shelf.Replace("tide-blue,,,,,,90", "tide-blue,,148,cotton,,,90", StringComparison.Ordinal)).Value;
        Assert.Equal(["tide-blue", "marsh"], yarns.Select(y => y.Id));
        Assert.Equal([("A7", 250.5, PackageForm.Cone), ("B1", 90, PackageForm.Ball)], yarns[0].Packages.Select(p => (p.Lot, p.GrossMass.Grams, p.Form)));
        Assert.Equal(148, yarns[0].LinearDensity.Value.Tex);
        Assert.Equal(18.5, yarns[0].Offer!.Price.Amount);
        Assert.Equal("marsh", yarns[1].Name);
        Assert.Equal(0.2, yarns[1].Fibres.Shares[1].MassShare.Value, 1e-12);
        Assert.Empty(yarns[1].Packages);
    }

    [Fact]
    public void Later_rows_of_a_yarn_need_no_more_than_the_package() =>
        Assert.Equal(2, YarnShelfTable.Read(Shelf).Value[0].Packages.Length);

    [Fact]
    public void A_shelf_written_and_read_is_the_same_shelf()
    {
        Yarn first = new(
            "ebb",
            "=HYPERLINK(\"x\")",
            Derived.Given("linear density", LinearDensity.FromTex(73.8123), Source.Measured, 1.25),
            FibreBlend.Parse("wool 80 %, silk, spun 20 %").Value,
            YarnConstruction.Boucle,
            new SrgbColour(1, 2, 3))
        {
            MeasuredWraps = Derived.Given("wraps", Sett.FromPerCentimetre(7.5), Source.Measured),
            WrapMeasure = WrapMeasure.Geometric,
            Packages = [new YarnPackage(PackageForm.Tube, Mass.FromGrams(100.25), Mass.FromGrams(8)) { Lot = "@lot", RelativeHumidity = Ratio.FromPercent(55) }],
            Offer = new YarnOffer(PackageForm.Skein, Mass.FromGrams(100), Money.FromAmount(21.9)),
        };
        string once = YarnShelfTable.Write([first, first with { Id = "flow", Packages = [], Offer = null, MeasuredWraps = null }]);
        Assert.Contains("\"'=HYPERLINK(\"\"x\"\")\"", once, StringComparison.Ordinal);
        ImmutableArray<Yarn> read = YarnShelfTable.Read(once).Value;
        Assert.Equal(once, YarnShelfTable.Write(read));
        Assert.Equal(first.Name, read[0].Name);
        Assert.Equal(1.25, read[0].LinearDensity.StandardDeviation, 1e-12);
        Assert.Equal("@lot", read[0].Packages[0].Lot);
        Assert.Equal(0.55, read[0].Packages[0].RelativeHumidity!.Value.Value, 1e-12);
        Assert.Equal(7.5, read[0].MeasuredWraps!.Value.PerCentimetre, 1e-9);
        Assert.Equal(WrapMeasure.Geometric, read[0].WrapMeasure);
    }

    [Theory]
    [InlineData("148,cotton", "fine,cotton", "line 2, column linear_density_tex", "\"fine\"")]
    [InlineData("148,cotton", ",cotton", "line 2, column linear_density_tex", "no linear density")]
    [InlineData("148,cotton", "0,cotton", "line 2, column linear_density_tex", "no linear density")]
    [InlineData("148,cotton", "148,seafoam", "line 2, column fibres", "seafoam")]
    [InlineData(",spun,", ",felted,", "line 2, column construction", "\"felted\"")]
    [InlineData("#3b7a78", "teal", "line 2, column colour", "\"teal\"")]
    [InlineData("250.5,30,", "25,30,", "line 2, column tare_g", "30 g, more than the 25 g")]
    [InlineData("30,cone", "30,box", "line 2, column package_form", "\"box\"")]
    [InlineData("227,18.5", "227,", "line 2, column offer_price", "no price")]
    [InlineData("227,18.5", "0,18.5", "line 2, column offer_net_mass_g", "holds nothing")]
    [InlineData("marsh,,60", ",,60", "line 4, column id", "no id")]
    [InlineData("linear_density_tex,", "tex,", "line 1", "no column \"linear_density_tex\"")]
    public void What_cannot_be_read_is_named_by_line_and_column(string old, string with, string where, string what)
    {
        Assert.Contains(old, Shelf, StringComparison.Ordinal);
        InputProblem problem = YarnShelfTable.Read(Shelf.Replace(old, with, StringComparison.Ordinal)).Problem!;
        Assert.Equal(where, problem.Where);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
    }
}
