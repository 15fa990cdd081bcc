using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Yarns;

public class FibreCatalogueTests
{
    public static TheoryData<string> Ids => [.. FibreCatalogue.All.Select(f => f.Id)];

    [Fact]
    public void The_fibres_of_handweaving_are_all_there() =>
        Assert.Equal(
            [
                "wool-woollen", "wool-worsted", "merino", "superwash-wool", "alpaca", "mohair", "cashmere", "silk-reeled", "silk-spun",
                "cotton", "cotton-mercerised", "linen", "hemp", "ramie", "viscose", "bamboo-viscose", "lyocell", "modal", "acetate",
                "nylon", "polyester", "acrylic", "metallised-film",
            ],
            FibreCatalogue.All.Select(f => f.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_figure_of_a_fibre_is_possible_and_names_its_source(string id)
    {
        Fibre fibre = FibreCatalogue.Get(id);
        Assert.InRange(fibre.Density.Value.GramsPerCubicCentimetre, 1.1, 1.6);
        Assert.InRange(fibre.PackingLow.Value, 0.39, fibre.PackingHigh.Value);
        Assert.InRange(fibre.Packing.Value.Value, fibre.PackingLow.Value, fibre.PackingHigh.Value);
        Assert.True(fibre.PackingHigh.Value <= 1);
        Assert.InRange(fibre.CommercialRegainEurope.Value.Percent, fibre.CommercialRegainUnitedStates.Value.Percent - 1e-9, 18.25);
        Assert.InRange(fibre.RoomRegain.Value.Percent, 0, 16);
        Assert.InRange(fibre.TenacityCentinewtonPerTex.Value.Value, 8, 60);
        Assert.InRange(fibre.Elongation.Value.Percent, 2, 43);
        Assert.InRange(fibre.WetStrength.Value.Percent, 45, 120);
        Assert.InRange(fibre.WashingShrinkage.Value.Percent, 0, 15);
        Assert.Equal(fibre.Felts, fibre.Felting >= FeltingClass.Slight);
        Assert.EndsWith(".", fibre.Note, StringComparison.Ordinal);
        foreach (IDerived figure in new IDerived[] { fibre.Density, fibre.Packing, fibre.CommercialRegainEurope, fibre.CommercialRegainUnitedStates, fibre.RoomRegain, fibre.TenacityCentinewtonPerTex, fibre.Elongation, fibre.WetStrength, fibre.WashingShrinkage })
        {
            Assert.NotEqual("", figure.Working.Rule.Source.Name);
            Assert.NotEqual(SourceKind.Decision, figure.Working.Rule.Source.Kind);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_fibre_is_found_by_id_name_and_synonym(string id)
    {
        Fibre fibre = FibreCatalogue.Get(id);
        Assert.Equal(id, FibreCatalogue.Find(id.ToUpperInvariant()).Value.Id);
        Assert.Equal(id, FibreCatalogue.Find(fibre.Name).Value.Id);
        Assert.All(fibre.Synonyms, s => Assert.Equal(id, FibreCatalogue.Find($"  {s} ").Value.Id));
    }

    [Theory]
    [InlineData("wool", "wool-worsted")]
    [InlineData("silk", "silk-spun")]
    [InlineData("bamboo", "bamboo-viscose")]
    [InlineData("rayon", "viscose")]
    [InlineData("flax", "linen")]
    [InlineData("mercerized cotton", "cotton-mercerised")]
    [InlineData("Cotton Mercerised", "cotton-mercerised")]
    public void Everyday_names_are_known(string name, string id) => Assert.Equal(id, FibreCatalogue.Find(name).Value.Id);

    [Theory]
    [InlineData("coton", "cotton")]
    [InlineData("merrino", "merino")]
    [InlineData("alpacca", "alpaca")]
    public void A_near_miss_suggests_the_nearest_names(string name, string near)
    {
        InputProblem problem = FibreCatalogue.Find(name, "warp[0].fibre").Problem!;
        Assert.Contains(near, problem.Mend, StringComparison.Ordinal);
        Assert.Equal("warp[0].fibre", problem.Where);
    }

    [Fact]
    public void Chenille_is_told_apart_as_a_construction() =>
        Assert.Contains("construction as chenille", FibreCatalogue.Find("chenille").Problem!.Mend, StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("barnacle beard and bladderwrack")]
    public void An_unknown_fibre_gets_the_whole_list(string name) =>
        Assert.Contains("wool-woollen, wool-worsted", FibreCatalogue.Find(name).Problem!.Mend, StringComparison.Ordinal);

    [Fact]
    public void An_id_that_is_not_there_is_a_slip_of_the_program() => Assert.Throws<ArgumentException>(() => FibreCatalogue.Get("kelp"));
}
