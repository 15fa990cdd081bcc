using System.Text;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.RigidHeddles;

namespace Clothwright.Cli.Reports;

/// <summary>A draft laid out for rigid heddles, for a person.</summary>
internal static class RigidHeddleText
{
    /// <summary>Whether it can be woven, where the ends go, and what to do pick by pick.</summary>
    public static string Of(RigidHeddlePlan plan, RigidHeddleTable? table, RigidHeddle? heddle, Sett? sett)
    {
        var text = new StringBuilder();
        string heddles = plan.Heddles == 1 ? "1 rigid heddle" : $"{plan.Heddles} rigid heddles";
        if (plan.Cannot is { } cannot)
        {
            text.AppendLine($"It cannot be woven on {heddles} so.");
            WrappedText.Append(text, $"{cannot.What} {cannot.Mend}");
            if (plan.SmallestChange is { } change) WrappedText.Append(text, change.InWords);
            return text.ToString().TrimEnd();
        }

        string sticks = plan.Sticks.Length switch { 0 => "no pick-up stick", 1 => "1 pick-up stick", var n => $"{n} pick-up sticks" };
        text.AppendLine($"It can be woven on {heddles} with {sticks}.");
        if (table is not null)
        {
            text.AppendLine($"{heddle!.Name} heddles at {sett!.Value.PerInch:0.#} ends per inch ({sett.Value.PerCentimetre:0.0#} per cm); no end is pulled sideways by more than {table.GreatestShift.Millimetres:0.0} mm.");
            return text.AppendLine().Append(table.ToText()).ToString().TrimEnd();
        }

        text.AppendLine().AppendLine("Heddle 1 is nearest the weaver; an end in the eye of one goes through slots of the others.");
        foreach (var group in plan.Groups.Select((g, e) => (Group: g, End: e + 1)).GroupBy(x => x.Group).OrderBy(g => g.Key))
        {
            string where = group.Key > plan.Heddles ? "slots throughout" : plan.Heddles == 1 ? "eyes" : $"eyes of heddle {group.Key}";
            WrappedText.Append(text, $"{where}: ends {string.Join(", ", group.Select(x => x.End))}", "", "  ");
        }

        foreach (PickUpStick stick in plan.Sticks) WrappedText.Append(text, $"stick {stick.Number}: ends {string.Join(", ", stick.Ends.Select(e => e + 1))}", "", "  ");
        for (int pick = 0; pick < plan.Picks.Length; pick++) text.AppendLine($"pick {pick + 1}: {plan.Picks[pick]}");
        return text.AppendLine("With --heddle 10-dent the table tells the eye or slot of every end.").ToString().TrimEnd();
    }
}
