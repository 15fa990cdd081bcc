namespace Clothwright.Core.Weaves.Faults;

/// <summary>Phrases that slips share.</summary>
internal static class SlipWords
{
    public static string Count(int count, string thing) => count == 1 ? $"1 {thing}" : $"{count} {thing}s";

    public static string Shafts(ShaftSet shafts) => Listed(shafts, "shaft");

    public static string Treadles(ShaftSet treadles) => Listed(treadles, "treadle");

    public static string Pressed(Draft draft, int pick) =>
        draft.LiftPlan.IsEmpty ? Treadles(draft.Treadling[pick]) : Shafts(draft.LiftPlan[pick]);

    public static string FromEdge(int left, int right) => left <= right
        ? $"from the left edge ({Count(left, "end")})"
        : $"from the right edge ({Count(right, "end")})";

    private static string Listed(ShaftSet set, string thing) => set.Count switch
    {
        0 => $"no {thing}",
        1 => $"{thing} {set}",
        _ => $"{thing}s {string.Join(" and ", set.Members())}",
    };
}
