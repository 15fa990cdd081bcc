using System.Text;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Cli.Reports;

/// <summary>A draft fitted to a loom, for a person.</summary>
internal static class FitText
{
    /// <summary>Whether it can be woven, why, and the fitted draft.</summary>
    /// <param name="fit">The answer.</param>
    /// <param name="limits">The loom.</param>
    /// <param name="seconds">Time given for a proof; null for the quick search alone.</param>
    public static string Of(LoomFitResult fit, LoomLimits limits, double? seconds)
    {
        var text = new StringBuilder();
        text.AppendLine(fit.Feasible
            ? $"It can be woven with {fit.Shafts.Value.Count} shafts and {fit.Treadles.Value.Count} treadles{Sure(fit, seconds)}."
            : IsImpossible(fit, limits) ? "It cannot be woven on this loom as it stands."
            : $"No way was found to weave it on this loom; not proved that there is none{Longer(seconds)}.");
        foreach (string reason in fit.Reasons) WrappedText.Append(text, reason);
        if (!fit.Feasible && fit.SmallestChange is { } change && FewestDraft.Of(change.Cloth).TryGet(out Draft? changed))
        {
            return text.AppendLine().AppendLine("After that change:").AppendLine().Append(DraftText.Of(changed)).ToString().TrimEnd();
        }

        if (fit.Draft is { } draft) text.AppendLine().Append(DraftText.Of(draft));
        return text.ToString().TrimEnd();
    }

    /// <summary>Whether it is proved that the loom cannot weave it.</summary>
    public static bool IsImpossible(LoomFitResult fit, LoomLimits limits) =>
        !fit.Feasible && (fit.Optimal || fit.Shafts.Value.Count > limits.Shafts || fit.TreadlesAtLeast > limits.Treadles);

    private static string Longer(double? seconds) => seconds is { } time ? $" ({time:0.##} s were not enough)" : "; --seconds 20 tries longer";

    private static string Sure(LoomFitResult fit, double? seconds)
    {
        if (fit.Optimal) return ", and with no fewer";
        return $"; at least {fit.TreadlesAtLeast} treadles are needed, not proved that fewer than {fit.Treadles.Value.Count} will not do{Longer(seconds)}";
    }
}
