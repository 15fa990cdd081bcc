using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Plans;

/// <summary>Cautions for children and babies by the table, on a piece planned on a warp of the samples.</summary>
public class CautionsTableTests
{
    private const string Table = "Tables/cautions.md";

    private static readonly PlanRequest Warp = WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", "reedbed-scarves.json"))).Value.Plan().Value.Request;

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "YH");

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_piece_carries_the_caution_that_is_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        Piece piece = Warp.Pieces[0] with
        {
            Wearer = Enum.Parse<Wearer>(row.Text("wearer"), ignoreCase: true),
            Kind = Enum.Parse<PieceKind>(row.Text("kind"), ignoreCase: true),
            Ties = row.TextOrNull("ties") is not null,
            Nightwear = row.TextOrNull("nightwear") is not null,
        };
        PlanResult plan = WarpPlanner.Plan(Warp with { Pieces = [piece] }).Value;
        if (row.Expected[0] == "none")
        {
            Assert.DoesNotContain(plan.Cautions, c => c.Id.StartsWith("child", StringComparison.Ordinal) || c.Id.StartsWith("baby", StringComparison.Ordinal));
            return;
        }

        Caution caution = Assert.Single(plan.Cautions, c => c.Id == row.Expected[0]);
        foreach (string words in row.Expected.Skip(1)) Assert.Contains(words, caution.Text, StringComparison.Ordinal);
    }
}
