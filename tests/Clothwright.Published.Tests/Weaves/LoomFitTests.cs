using Clothwright.Core.Looms;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Every structure of the table, fitted: the numbers of shafts and treadles listed there, and the same cloth.</summary>
public class LoomFitTests
{
    public static TheoryData<string> Ids => WeaveTables.Ids("weave-structures");

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_structure_fits_the_shafts_and_treadles_listed(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row("weave-structures", id);
        Drawdown cloth = Drawdown.Parse(row["drawdown"]).Value;
        foreach (ShedAction shed in (ShedAction[])[ShedAction.Rising, ShedAction.Sinking, ShedAction.Countermarche])
        {
            LoomFitResult fit = LoomFit.For(cloth, new LoomLimits(64, 64, 1, shed));
            Assert.True(fit is { Feasible: true, Optimal: true });
            Assert.Equal(row["fewest"], $"{fit.Shafts.Value}/{fit.Treadles.Value}");
            Assert.Equal(cloth, fit.Draft!.Drawdown());
        }
    }
}
