using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Plans.Wefts;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns of wefts that change weight and hand of the cloth.</summary>
internal static class WeftYarnWarnings
{
    public static IEnumerable<PlanWarning> Of(PlanRequest request)
    {
        for (int i = 0; i < request.Pieces.Length; i++)
        {
            Piece piece = request.Pieces[i];
            foreach (WeftRun run in piece.Weft.Where(r => r.ClaspedWith is not null).DistinctBy(r => (r.YarnId, r.ClaspedWith)))
            {
                var thread = WeftThread.Of(request, run, $"pieces[{i}].weft");
                LinearDensity one = request.Shelf.First(y => y.Id == run.YarnId).LinearDensity.Value;
                yield return new PlanWarning(
                    "clasped-weft",
                    $"pieces[{i}].weft",
                    $"Clasped weft lies doubled: a pick of {piece.Name} holds {thread.Lying.LinearDensity.Value} where a single one holds {one}, so the cloth comes out heavier and thicker.",
                    "Take a finer weft, or beat to fewer picks; weave a sample first.");
            }
        }
    }
}
