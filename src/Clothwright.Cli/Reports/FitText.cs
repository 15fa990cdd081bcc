using System.Text;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Cli.Reports;

/// <summary>A draft fitted to a loom, for a person.</summary>
internal static class FitText
{
    /// <summary>Whether it can be woven, why, and the fitted draft.</summary>
    /// <param name="fit">The answer.</param>
    /// <param name="seconds">Time given for a proof; null for the quick search alone.</param>
    public static string Of(LoomFitResult fit, double? seconds)
    {
        var text = new StringBuilder();
        text.AppendLine(fit.Feasible
            ? $"It can be woven with {fit.Shafts.Value.Count} shafts and {fit.Treadles.Value.Count} treadles{Sure(fit, seconds)}."
            : "It cannot be woven on this loom as it stands.");
        foreach (string reason in fit.Reasons) WrappedText.Append(text, reason);
        if (fit.Draft is { } draft) text.AppendLine().Append(DraftText.Of(draft));
        return text.ToString().TrimEnd();
    }

    private static string Sure(LoomFitResult fit, double? seconds)
    {
        if (fit.Optimal) return ", and with no fewer";
        string known = $"not proved that fewer will not do (at least {fit.TreadlesAtLeast} treadles are needed";
        return seconds is { } time ? $"; {known}; {time:0.##} s were not enough)" : $"; {known}; --seconds 20 tries longer)";
    }
}
