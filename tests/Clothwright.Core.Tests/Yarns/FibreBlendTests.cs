using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class FibreBlendTests
{
    private static readonly Fibre[] Fibres = [.. FibreCatalogue.All];

    private static readonly Gen<FibreBlend> AnyBlend =
        Gen.Select(Gen.OneOf(Fibres), Gen.Double[0.5, 10]).Array[1, 4].Select(parts => FibreBlend.Of([.. parts.Select(p => (p.Item1, p.Item2))]));

    [Theory]
    [InlineData("cotton", "cotton")]
    [InlineData("wool 80 %, silk 20 %", "80 % wool-worsted, 20 % silk-spun")]
    [InlineData("80 % wool, 20 % silk", "80 % wool-worsted, 20 % silk-spun")]
    [InlineData("20% silk 80% wool", "80 % wool-worsted, 20 % silk-spun")]
    [InlineData("cotton 60 / linen 40", "60 % cotton, 40 % linen")]
    [InlineData("100 % linen", "linen")]
    [InlineData("silk, spun 50 %, silk, reeled 50 %", "50 % silk-spun, 50 % silk-reeled")]
    [InlineData("viscose (rayon) 70 % + nylon 30 %", "70 % viscose, 30 % nylon")]
    public void Blends_are_read_with_the_share_before_or_after(string text, string blend) =>
        Assert.Equal(blend, FibreBlend.Parse(text).Value.ToString());

    [Theory]
    [InlineData("", "No fibre")]
    [InlineData("wool 80 %, silk 10 %", "sum to 90 %")]
    [InlineData("wool, silk", "has no share")]
    [InlineData("wool 80 %, silk", "has no share")]
    [InlineData("wool 0 %, silk 100 %", "not above 0")]
    [InlineData("wool 120 %", "not above 0 and at most 100")]
    [InlineData("80 % wool, 20 % seaweed-and-kelp", "not a fibre")]
    [InlineData("80 %", "missing")]
    public void What_is_no_blend_is_refused_with_a_mend(string text, string says)
    {
        InputProblem problem = FibreBlend.Parse(text, "yarns[0].fibres").Problem!;
        Assert.Contains(says, problem.What, StringComparison.Ordinal);
        Assert.Equal("yarns[0].fibres", problem.Where);
        Assert.NotEqual("", problem.Mend);
        Assert.NotNull(problem.Position);
    }

    [Fact]
    public void Any_text_is_read_or_refused_but_never_throws() =>
        Gen.OneOf<string>(Gen.String, Gen.OneOf("wool", "silk, spun", "80 %", "20", ",", "(", ")", " ", "/").Array.Select(p => string.Concat(p)))
            .Sample(text => Assert.True(FibreBlend.Parse(text) is { Succeeded: true } or { Problem.Mend.Length: > 0 }));

    [Fact]
    public void A_written_blend_reads_back_with_the_same_shares() =>
        AnyBlend.Sample(blend =>
        {
            FibreBlend back = FibreBlend.Parse(blend.ToString()).Value;
            Assert.Equal(blend.Shares.Select(s => s.Fibre.Id), back.Shares.Select(s => s.Fibre.Id));
            Assert.All(blend.Shares.Zip(back.Shares), p => Assert.Equal(p.First.MassShare.Value, p.Second.MassShare.Value, 1e-7));
        });

    [Fact]
    public void The_same_fibres_in_the_same_shares_are_the_same_blend()
    {
        Assert.Equal(FibreBlend.Parse("wool 80 %, silk 20 %").Value, FibreBlend.Parse("20 % silk-spun, 80 % worsted").Value);
        Assert.Equal(FibreBlend.Parse("linen").Value.GetHashCode(), FibreBlend.Parse("flax 100 %").Value.GetHashCode());
        Assert.NotEqual(FibreBlend.Parse("wool 80 %, silk 20 %").Value, FibreBlend.Parse("wool 70 %, silk 30 %").Value);
    }

    [Fact]
    public void Shares_sum_to_one_largest_first() =>
        AnyBlend.Sample(blend =>
        {
            Assert.Equal(1, blend.Shares.Sum(s => s.MassShare.Value), 12);
            Assert.Equal(blend.Shares.Select(s => s.MassShare.Value).OrderDescending(), blend.Shares.Select(s => s.MassShare.Value));
        });

    [Fact]
    public void Every_figure_of_a_blend_lies_between_those_of_its_fibres() =>
        AnyBlend.Sample(blend =>
        {
            Between(blend, blend.Density.Value.GramsPerCubicCentimetre, f => f.Density.Value.GramsPerCubicCentimetre);
            Between(blend, blend.Packing.Value.Value, f => f.Packing.Value.Value);
            Between(blend, blend.BulkDensity.Value.GramsPerCubicCentimetre, f => f.BulkDensity.Value.GramsPerCubicCentimetre);
            Between(blend, blend.Regain(RegainBasis.Europe).Value.Value, f => f.CommercialRegainEurope.Value.Value);
            Between(blend, blend.Regain(RegainBasis.Room).Value.Value, f => f.RoomRegain.Value.Value);
            Between(blend, blend.WashingShrinkage.Value.Value, f => f.WashingShrinkage.Value.Value);
            Between(blend, blend.Elongation.Value.Value, f => f.Elongation.Value.Value);
            Between(blend, blend.WetStrength.Value.Value, f => f.WetStrength.Value.Value);
        });

    [Fact]
    public void Volumes_and_not_densities_add_up_in_a_blend() =>
        // 1 g of wool (1.31) and 1 g of cotton (1.52): 2 g in 1/1.31 + 1/1.52 cm³ (densities: Morton and Hearle, Table 5.1).
        Assert.Equal(2 / (1 / 1.31 + 1 / 1.52), FibreBlend.Parse("wool 50 %, cotton 50 %").Value.Density.Value.GramsPerCubicCentimetre, 9);

    [Theory]
    [InlineData("merino 80 %, nylon 20 %", FeltingClass.Strong)]
    [InlineData("cotton 90 %, merino 10 %", FeltingClass.None)]
    [InlineData("linen", FeltingClass.None)]
    public void A_blend_felts_as_its_fibres_do_from_a_fifth_on(string text, FeltingClass felting) =>
        Assert.Equal(felting, FibreBlend.Parse(text).Value.Felting);

    [Fact]
    public void A_part_of_nothing_is_a_slip_of_the_program()
    {
        Assert.Throws<ArgumentException>(() => FibreBlend.Of());
        Assert.Throws<ArgumentException>(() => FibreBlend.Of((Fibres[0], 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FibreBlend.Pure(Fibres[0]).Regain((RegainBasis)9));
    }

    private static void Between(FibreBlend blend, double value, Func<Fibre, double> figure)
    {
        double[] figures = [.. blend.Shares.Select(s => figure(s.Fibre))];
        Assert.InRange(value, figures.Min() - 1e-12, figures.Max() + 1e-12);
    }
}
