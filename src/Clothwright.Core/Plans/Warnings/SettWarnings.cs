using System.Globalization;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Plans.Setting;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns of setts that the yarn, the purpose or the reed does not bear out.</summary>
internal static class SettWarnings
{
    private const double ReedOff = 0.03;

    public static IEnumerable<PlanWarning> Of(PlanRequest request, SettChoice choice)
    {
        UnitStyle units = request.Units;
        string sett = Text(choice.Sett.Value, units);
        if (choice.Sett.Value > choice.Advice.MaximumEnds.Value)
        {
            yield return new PlanWarning(
                "sett-too-close", "sett", $"{sett} is closer than these yarns can lie in this weave ({Text(choice.Advice.MaximumEnds.Value, units)} at most).", "Set more open, or choose a weave with longer floats.");
        }
        else if (!choice.Advice.EndsRange.Holds(choice.Sett.Value))
        {
            bool open = choice.Sett.Value < choice.Advice.EndsRange.Low;
            yield return new PlanWarning(
                open ? "sett-open" : "sett-close",
                "sett",
                $"{sett} is {(open ? "more open" : "closer")} than cloth of this purpose usually is ({Text(choice.Advice.EndsRange.Low, units)} to {Text(choice.Advice.EndsRange.High, units)}).",
                $"Keep it if that is what is wanted; the advice is {Text(choice.Advice.Ends.Value, units)}.");
        }

        if (choice.Reed is not { } reed)
        {
            yield return new PlanWarning("no-reed", "bench", "The bench holds no reed or rigid heddle for this loom, so nothing says whether the sett can be sleyed.", "Put the reeds at hand on the bench.");
            yield break;
        }

        if (Math.Abs(reed.Error.Value) > ReedOff)
        {
            yield return new PlanWarning(
                "reed-off",
                "sett",
                $"{reed.Name} sleyed {reed.Sley} gives {sett}, {Percent(Math.Abs(reed.Error.Value))} {(reed.Error.Value > 0 ? "closer" : "more open")} than the sett wanted.",
                "The plan reckons with what the reed gives; borrow a reed nearer to the sett if the difference matters.");
        }

        foreach (string warning in reed.Warnings) yield return new PlanWarning("reed-marks", "sett", $"{reed.Name}: {warning}", "Weave a sample and wash it before judging.");
    }

    private static string Text(Sett sett, UnitStyle units) => QuantityText.Format(QuantityKind.Sett, sett.BaseValue, units);

    private static string Percent(double share) => share.ToString("0.0 %", CultureInfo.InvariantCulture);
}
