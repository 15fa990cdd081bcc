using System.Collections.Immutable;
using System.Text;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>The table to dress rigid heddles by: eye or slot of each end in each heddle, sticks, and what to do pick by pick.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Holes">For each end, for each heddle: its eye or slot.</param>
/// <param name="Placements">How the ends of each heddle lie; null for a heddle without ends in its eyes.</param>
public sealed record RigidHeddleTable(RigidHeddlePlan Plan, ImmutableArray<ImmutableArray<HeddleHole>> Holes, ImmutableArray<EyePlacement?> Placements)
{
    /// <summary>The end pulled furthest sideways.</summary>
    public Length GreatestShift => Placements.Select(p => p?.GreatestShift ?? Length.Zero).Max();

    /// <summary>Makes the table.</summary>
    /// <param name="plan">A plan.</param>
    /// <param name="heddle">The heddles, all of one number.</param>
    /// <param name="sett">Sett of the warp.</param>
    public static RigidHeddleTable Of(RigidHeddlePlan plan, RigidHeddle heddle, Sett sett)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(heddle);
        ImmutableArray<EyePlacement?> placements = [.. Enumerable.Range(1, plan.Heddles).Select(h => Placement(plan, h, heddle.Spaces, sett))];
        var byHeddle = placements.Select((p, h) => Column(plan, h + 1, p, heddle.Spaces, sett)).ToList();
        return new RigidHeddleTable(plan, [.. Enumerable.Range(0, plan.Groups.Length).Select(e => byHeddle.Select(c => c[e]).ToImmutableArray())], placements);
    }

    /// <summary>The table as plain text, one line an end and one line a pick.</summary>
    public string ToText()
    {
        var text = new StringBuilder();
        for (int end = 0; end < Holes.Length; end++)
        {
            text.Append("end ").Append(end + 1).Append(": ");
            text.AppendJoin(", ", Holes[end].Select((hole, h) => Plan.Heddles == 1 ? $"{hole}" : $"heddle {h + 1} {hole}"));
            foreach (PickUpStick stick in Plan.Sticks.Where(s => s.Ends.Contains(end))) text.Append(", on stick ").Append(stick.Number);
            text.Append('\n');
        }

        for (int pick = 0; pick < Plan.Picks.Length; pick++) text.Append("pick ").Append(pick + 1).Append(": ").Append(Plan.Picks[pick]).Append('\n');
        return text.ToString();
    }

    private static EyePlacement? Placement(RigidHeddlePlan plan, int heddle, Sett spaces, Sett sett)
    {
        int[] ends = [.. Enumerable.Range(0, plan.Groups.Length).Where(e => plan.Groups[e] == heddle)];
        return ends.Length == 0 ? null : EyePlacement.Of(ends, sett, spaces);
    }

    // Eye ends take their eyes; the others the slot nearest to their place that lies between their neighbours' eyes.
    private static HeddleHole[] Column(RigidHeddlePlan plan, int heddle, EyePlacement? placement, Sett spaces, Sett sett)
    {
        double pitch = 2 / spaces.PerMetre;
        var holes = new HeddleHole[plan.Groups.Length];
        int used = 0;
        for (int end = 0; end < holes.Length; end++)
        {
            if (plan.Groups[end] == heddle)
            {
                holes[end] = new HeddleHole(true, placement!.Eyes[used++]);
                continue;
            }

            double place = end / sett.PerMetre - (placement?.FirstEyeFromFirstEndMetres ?? 0);
            int slot = (int)Math.Floor(place / pitch + 1e-9) + 1;
            int least = used > 0 ? placement!.Eyes[used - 1] : int.MinValue;
            int most = placement is not null && used < placement.Eyes.Length ? placement.Eyes[used] - 1 : int.MaxValue;
            holes[end] = new HeddleHole(false, Math.Clamp(slot, least, most));
        }

        return holes;
    }
}
