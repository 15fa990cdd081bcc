using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class YarnCountTests
{
    private static readonly CountSystem[] Systems = Enum.GetValues<CountSystem>();

    private static readonly Gen<YarnCount> AnyCount =
        from system in Gen.OneOf(Systems)
        from number in Gen.OneOf<double>(Gen.Double[0.05, 9999], Gen.Int[1, 200].Select(n => (double)n))
        from plies in Gen.Int[1, 12]
        from basis in Gen.OneOf(CountBasis.Singles, CountBasis.Resultant)
        select system.Definition().PlyOrder == PlyOrder.None
            ? YarnCount.Of(system, number)
            : YarnCount.Of(system, number, plies, basis);

    [Fact]
    public void Every_system_is_defined_once()
    {
        Assert.Equal(Systems.Order(), CountSystems.All.Select(s => s.System).Order());
        Assert.Equal(Systems.Length, CountSystems.All.Select(s => s.Name).Distinct().Count());
    }

    [Fact]
    public void Every_system_is_found_by_its_name_its_sign_and_its_other_spellings()
    {
        foreach (CountSystemDefinition system in CountSystems.All)
        {
            foreach (string spelling in system.Aliases.Append(system.Name).Append(system.Sign).Append(system.Name.ToUpperInvariant()))
            {
                Assert.Equal(system.System, CountSystems.Parse(spelling).Value);
            }
        }
    }

    [Theory]
    [InlineData("tex"), InlineData("dtex"), InlineData("denier"), InlineData("metric"), InlineData("cotton"), InlineData("worsted")]
    [InlineData("woollen-run"), InlineData("woollen-cut"), InlineData("linen"), InlineData("silk-english"), InlineData("yd/lb"), InlineData("m/kg"), InlineData("m/100g")]
    public void The_command_lines_names_are_known(string name) => Assert.Equal(name, CountSystems.Parse(name).Value.Definition().Name);

    [Fact]
    public void A_number_goes_to_tex_and_back_in_every_system() =>
        Gen.Select(Gen.OneOf(Systems), Gen.Double[1e-3, 1e5]).Sample((system, number) =>
        {
            CountSystemDefinition definition = system.Definition();
            double back = definition.NumberOf(LinearDensity.FromTex(definition.TexOf(number)));
            Assert.InRange(back / number, 1 - 1e-12, 1 + 1e-12);
        });

    [Fact]
    public void A_written_count_reads_back_as_the_same_yarn() =>
        AnyCount.Sample(count =>
        {
            YarnCount back = YarnCount.Parse(count.ToString(), count.System).Value;
            Assert.Equal(count.Plies, back.Plies);
            Assert.InRange(back.Tex / count.Tex, 1 - 1e-9, 1 + 1e-9);
            Assert.InRange(back.SinglesTex / count.SinglesTex, 1 - 1e-9, 1 + 1e-9);
        });

    [Fact]
    public void More_strands_make_a_thicker_yarn_except_where_the_number_is_of_the_finished_yarn() =>
        AnyCount.Where(c => c.Plies < 12 && c.System.Definition().PlyOrder != PlyOrder.None).Sample(count =>
        {
            YarnCount more = YarnCount.Of(count.System, count.Number, count.Plies + 1, count.Basis);
            Assert.True(count.Basis == CountBasis.Resultant ? Math.Abs(more.Tex - count.Tex) < 1e-9 * count.Tex : more.Tex > count.Tex);
        });
}
