using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class TenacityTests
{
    [Fact]
    public void Grams_force_per_denier_turn_into_centinewtons_per_tex_and_back() =>
        Gen.Double[0, 100].Sample(value =>
            Assert.Equal(value, Tenacity.GramForcePerDenierFromCentinewtonPerTex(Tenacity.CentinewtonPerTexFromGramForcePerDenier(value)), 1e-9));

    [Fact]
    public void A_denser_fibre_has_less_tenacity_at_the_same_stress() =>
        Gen.Select(Gen.Double[1, 1000], Gen.Double[0.9, 1.5]).Sample((stress, density) =>
            Assert.True(
                Tenacity.CentinewtonPerTexFromMegapascal(stress, Density.FromGramsPerCubicCentimetre(density))
                > Tenacity.CentinewtonPerTexFromMegapascal(stress, Density.FromGramsPerCubicCentimetre(density + 0.1))));

    [Fact]
    public void A_fibre_without_density_is_a_slip_of_the_program() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Tenacity.CentinewtonPerTexFromMegapascal(100, Density.Zero));
}
