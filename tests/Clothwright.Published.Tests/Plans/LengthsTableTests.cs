using Clothwright.Core.Plans.Lengths;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Published.Tests.Plans;

/// <summary>The chain of lengths by the table.</summary>
public class LengthsTableTests
{
    private const string Table = "Tables/lengths.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "P");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Lengths_are_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        if (id == "P07")
        {
            row.Check([FinishingShrinkage.OfSample("shrinkage", Cloth(row["before"]), Cloth(row["after"])).Value.Percent]);
            return;
        }

        Derived<Length> finished = Derived.Decision("finished", Length.FromCentimetres(row["finished"]));
        Derived<Ratio> shrinkage = Derived.Decision("shrinkage", Ratio.FromValue(row["shrinkage"]));
        Derived<Length> woven = FinishingShrinkage.Before("off the loom", finished, shrinkage);
        row.Check(id switch
        {
            "P06" => [
                woven.Value.Centimetres,
                FinishingShrinkage.After("added back", Derived.Decision("added back", Length.FromCentimetres(row["finished"] * (1 + row["shrinkage"]))), shrinkage).Value.Centimetres],
            "P09" => [TakeUp.YarnFor("warp", woven, Derived.Decision("take-up", Ratio.FromValue(row["takeUp"]))).Value.Centimetres + 2 * row["fringe"] + row["waste"]],
            _ => throw new InvalidOperationException($"No computation stands behind {id}."),
        });
    }

    private static Derived<Length> Cloth(double centimetres) => Derived.Decision("cloth", Length.FromCentimetres(centimetres));
}
