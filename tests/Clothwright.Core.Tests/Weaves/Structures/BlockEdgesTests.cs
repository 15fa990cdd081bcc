using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class BlockEdgesTests
{
    [Fact]
    public void Turned_blocks_of_twill_and_every_satin_cut_cleanly_on_all_four_sides()
    {
        foreach (int n in Enumerable.Range(3, 14))
        {
            foreach (int step in SatinSteps.On(n).Prepend(1))
            {
                UnitWeave unit = TurnedBlocks.Unit(n, step);
                for (int i = 0; i < n; i++)
                {
                    Assert.NotEqual(unit.Shown[i, n - 1], unit.Hidden[i, 0]);
                    Assert.NotEqual(unit.Hidden[i, n - 1], unit.Shown[i, 0]);
                    Assert.NotEqual(unit.Shown[n - 1, i], unit.Hidden[0, i]);
                    Assert.NotEqual(unit.Hidden[n - 1, i], unit.Shown[0, i]);
                }
            }
        }
    }

    [Fact]
    public void A_unit_weave_woven_is_its_profile_substituted() =>
        Gen.Select(Gen.Int[1, 4].Array[1, 8], Gen.ULong[0, 15].Array[1, 6], MadeWeaves.AnyOf(SummerAndWinter.Unit, ExchangedLayers.Unit, TurnedBlocks.Unit(5, 2)))
            .Sample((ends, picks, unit) =>
            {
                var profile = new Profile([.. ends], [.. picks.Select(p => new ShaftSet(p))]);
                Assert.Equal(unit.Substituted(profile), unit.Woven(profile).Draft.Drawdown());
            });
}
