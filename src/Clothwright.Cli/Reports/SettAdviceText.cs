using System.Text;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Setts.Reeds;

namespace Clothwright.Cli.Reports;

/// <summary>Advice on a sett in words.</summary>
internal static class SettAdviceText
{
    private const int ReedsShown = 6;

    /// <summary>The advice, written.</summary>
    /// <param name="advice">The advice.</param>
    public static string Of(SettAdvice advice)
    {
        var text = new StringBuilder();
        text.AppendLine($"Set {advice.Ends.Value.PerInch:0.#} ends per inch ({advice.Ends.Value.PerCentimetre:0.0#} per cm), "
            + $"{advice.EndsRange.Low.PerInch:0.#} to {advice.EndsRange.High.PerInch:0.#} will serve; beat about {advice.Picks.Value.PerInch:0.#} picks per inch.");
        text.AppendLine($"Yarn diameter {advice.WarpDiameter.Working.Format()}; {advice.WarpWrapsByHand.Value.PerInch:0} wraps per inch by hand.");
        text.AppendLine("Closest this weave can be set:");
        foreach (SettLimit limit in advice.Limits)
        {
            WrappedText.Append(text, $"{limit.Method} ({limit.Ends.Working.Rule.Source})", $"  {limit.Ends.Value.PerInch,6:0.0} per inch  ", "                    ");
        }

        if (!advice.Reeds.IsEmpty) text.AppendLine("Reeds and heddles that give it, best first:");
        foreach (ReedFit reed in advice.Reeds.Take(ReedsShown))
        {
            text.AppendLine($"  {reed.Name,-12} sleyed {reed.Sley,-8} gives {reed.Sett.PerInch,5:0.0} per inch ({reed.Error.Percent:+0.0;-0.0} %)");
            foreach (string warning in reed.Warnings) WrappedText.Append(text, warning, "      ", "      ");
        }

        foreach (string note in advice.Notes) WrappedText.Append(text, note);
        return text.ToString().TrimEnd();
    }
}
