using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves;

public class TieUpCompletionTests
{
    [Fact]
    public void A_tie_up_that_was_lost_is_found_again_or_another_that_weaves_the_same() =>
        Clothes.Drafts().Where(d => d.LiftPlan.IsEmpty).Sample(
            draft =>
            {
                Draft found = TieUpCompletion.Of(draft with { TieUp = [] }, draft.Drawdown()).Value;
                Assert.Equal(draft.Drawdown(), found.Drawdown());
            },
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_cloth_that_no_tie_up_weaves_is_refused_at_the_first_crossing()
    {
        Draft draft = DraftNotation.Parse("1212 | 1:1 2:2 | 12").Value;

        InputProblem problem = TieUpCompletion.Of(draft, Clothes.Of("1010/0111")).Problem!;

        Assert.Equal("drawdown, pick 2, end 3", problem.Where);
    }

    [Fact]
    public void A_cloth_of_another_size_is_refused()
    {
        Draft draft = DraftNotation.Parse("1212 | 1:1 2:2 | 12").Value;

        Assert.Contains("4 ends", TieUpCompletion.Of(draft, Clothes.Of("10/01")).Problem!.What, StringComparison.Ordinal);
    }
}
