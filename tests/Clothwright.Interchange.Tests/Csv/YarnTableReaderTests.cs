using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Csv;
using CsCheck;

namespace Clothwright.Interchange.Tests.Csv;

public class YarnTableReaderTests
{
    private const string German = """
        Garn;Nummer;Material;Farbe;Gewicht (g);Anzahl;Preis;Partie
        Priel;8/2;Baumwolle;Schlick grau;200;3;12,50;B-7
        Düne;16/2;Leinen;natur;227,5;1;18;
        """;

    [Fact]
    public void A_german_table_with_semicolons_and_decimal_commas_is_understood()
    {
        YarnTableSurvey survey = YarnTableSurvey.Of(German).Value;
        Assert.Equal((';', true, true), (survey.Mapping.Separator, survey.Mapping.DecimalComma, survey.Mapping.HasHeader));
        Assert.Equal(
            [YarnColumnRole.Name, YarnColumnRole.Count, YarnColumnRole.Fibres, YarnColumnRole.ColourName, YarnColumnRole.NetMass, YarnColumnRole.Packages, YarnColumnRole.Price, YarnColumnRole.Lot],
            survey.Mapping.Columns.Select(c => c.Role));
        YarnTableOutcome outcome = Read(German);
        Assert.Empty(outcome.Problems);
        YarnEntry cotton = outcome.Yarns[0];
        Assert.Equal(("priel-schlick-grau", "Priel, Schlick grau", "8/2", "cotton", "cotton"), (cotton.Id, cotton.Name, cotton.Count, cotton.CountSystem, cotton.Fibres[0].FibreId));
        Assert.Equal((3, 200, "B-7", MassBasis.Told), (cotton.Packages.Length, Math.Round(cotton.Packages[0].GrossMass.Grams, 6), cotton.Packages[0].Lot, cotton.Packages[0].Basis));
        Assert.Equal(12.5, cotton.Offer!.Price.Amount);
        Assert.Equal(("linen", 227.5), (outcome.Yarns[1].CountSystem, Math.Round(outcome.Yarns[1].Packages[0].GrossMass.Grams, 6)));
    }

    [Theory]
    [InlineData("Yarn,Weight (oz)\n\"8/2 cotton, fog\",8", 226.796)]
    [InlineData("Yarn\tWeight\n8/2 cotton fog\t8 oz", 226.796)]
    [InlineData("Yarn|net mass, kg\n8/2 cotton fog|0.25", 250)]
    [InlineData("\"8/2 cotton, 200 g cone, fog\"\n\"8/2 cotton, 1/2 lb cone, haze\"", 200)]
    public void Masses_are_read_in_the_unit_of_cell_or_column(string table, double grams) =>
        // One ounce is 28.349523125 g (1959).
        Assert.Equal(grams, Read(table).Yarns[0].Packages[0].GrossMass.Grams, 3);

    [Theory]
    [InlineData("name,tex,fibre\nfog,148,cotton", 148)]
    [InlineData("name,Nm,fibre\nfog,28/2,merino", 71.43)]
    [InlineData("name,yd/lb,fibre\nfog,3360,cotton", 147.63)]
    [InlineData("name,label,fibre\nfog,400 m / 100 g,wool", 250)]
    [InlineData("name,size,count system,fibre\nfog,20/2,worsted,wool", 88.58)]
    public void Fineness_is_read_however_it_is_given(string table, double tex)
    {
        // ASTM D2260: 885.8118 / 10 for worsted 20/2, 1000 / 14 for Nm 28/2, 496,054.65 / 3360 for yards per pound.
        YarnTableOutcome outcome = Read(table);
        Assert.Empty(outcome.Problems);
        Assert.Equal(tex, outcome.Yarns[0].ToYarn().Value.LinearDensity.Value.Tex, 0.01);
    }

    [Fact]
    public void Every_problem_is_told_with_its_line_and_column()
    {
        YarnTableOutcome outcome = Read("name,count,fibre,weight,tare,gross\nfog,8/2,cotton,200,,\nmist,8/2,gossamer,200,,\nhaze,8/2,wool,200,,\ndew,8/2,cotton,heavy,,\nrime,8/2,cotton,,300,200\n,8/2,cotton,200,,");
        Assert.Equal(["line 3, column fibre", "line 4, column count", "line 5, column weight", "line 6, column tare"], outcome.Problems.Take(4).Select(p => p.Where));
        Assert.Contains("gossamer", outcome.Problems[0].What, StringComparison.Ordinal);
        Assert.Contains("count system", outcome.Problems[1].What, StringComparison.Ordinal);
        Assert.Contains("heavy", outcome.Problems[2].What, StringComparison.Ordinal);
        Assert.All(outcome.Problems, p => Assert.NotEmpty(p.Mend));
    }

    [Fact]
    public void The_weaver_can_say_what_a_column_means()
    {
        const string table = "a,b,c\nfog,2/8,wool";
        YarnTableMapping mapping = new(',', false, true, [new(YarnColumnRole.Name), new(YarnColumnRole.Count, "metric"), new(YarnColumnRole.Fibres)]);
        YarnEntry yarn = Assert.Single(YarnTableReader.Read(table, mapping, _ => false).Yarns);
        Assert.Equal(("2/8", "metric"), (yarn.Count, yarn.CountSystem));
    }

    [Fact]
    public void Rows_of_one_yarn_are_its_packages()
    {
        YarnTableOutcome outcome = Read("name,count,fibre,gross (g),tare (g),lot\nfog,8/2,cotton,231,31,A\nfog,8/2,cotton,120,31,B\nhaze,8/2,cotton,231,,A");
        Assert.Equal([2, 1], outcome.Yarns.Select(y => y.Packages.Length));
        Assert.Equal(["A", "B"], outcome.Yarns[0].Packages.Select(p => p.Lot));
        // Common practice, no source: a paper cone of a small package weighs 30 g in the middle.
        Assert.Equal((MassBasis.UsualSupport, 30), (outcome.Yarns[1].Packages[0].Basis, Math.Round(outcome.Yarns[1].Packages[0].Tare.Grams, 6)));
    }

    [Fact]
    public void A_table_without_names_is_understood_by_what_stands_in_it()
    {
        YarnTableSurvey survey = YarnTableSurvey.Of("8/2,cotton,#2f5f77,200 g\n16/2,linen,#e9dfc9,100 g").Value;
        Assert.False(survey.Mapping.HasHeader);
        Assert.Equal([YarnColumnRole.Count, YarnColumnRole.Fibres, YarnColumnRole.Colour, YarnColumnRole.NetMass], survey.Mapping.Columns.Select(c => c.Role));
    }

    [Fact]
    public void An_id_that_stands_on_the_shelf_is_not_given_again() =>
        Assert.Equal("fog-2", Read("name,count,fibre\nfog,8/2,cotton", id => id == "fog").Yarns[0].Id);

    [Fact]
    public void The_shelfs_own_table_reads_the_same_by_mapping()
    {
        string own = YarnShelfTable.Write(Read(German).Yarns.Select(y => y.ToYarn().Value));
        YarnTableOutcome again = Read(own);
        Assert.Empty(again.Problems);
        Assert.Equal(["priel-schlick-grau", "düne-natur"], again.Yarns.Select(y => y.Id));
        Assert.Equal(3, again.Yarns[0].Packages.Length);
        Assert.Equal(147.63, again.Yarns[0].ToYarn().Value.LinearDensity.Value.Tex, 0.01);
    }

    [Fact]
    public void Any_text_is_read_without_a_slip() => Gen.String[Gen.OneOf(Gen.Char, Gen.Char[",;\t|\"\n8/2 cotg#"]), 0, 200].Sample(text =>
    {
        if (!YarnTableSurvey.Of(text).TryGet(out YarnTableSurvey? survey)) return;
        YarnTableReader.Read(text, survey.Mapping, _ => false);
    });

    private static YarnTableOutcome Read(string table, Func<string, bool>? isTaken = null) =>
        YarnTableReader.Read(table, YarnTableSurvey.Of(table).Value.Mapping, isTaken ?? (_ => false));
}
