using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Commands;

/// <summary>Reads the option <c>--units</c>.</summary>
internal static class UnitWord
{
    /// <summary>The units.</summary>
    /// <param name="text">As typed; case does not matter.</param>
    /// <exception cref="InputProblemException">It is neither of the two.</exception>
    public static UnitStyle Read(string text) => text.Trim().ToLowerInvariant() switch
    {
        "metric" => UnitStyle.Metric,
        "customary" => UnitStyle.Customary,
        _ => throw new InputProblemException(new InputProblem($"\"{text}\" are no units.", "--units", "Use metric or customary.")),
    };
}
