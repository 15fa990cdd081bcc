using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>The counts in which yarns for handweaving are commonly sold.</summary>
public static class TradeCounts
{
    /// <summary>Every count with its fibres; a count sold in unlike fibres may come twice.</summary>
    public static ImmutableArray<TradeCount> All { get; } = [.. EmbeddedTable.Rows("trade-counts.table.txt").Select(Read)];

    /// <summary>The trade count of a system that is nearest to a measured yarn, by ratio of the thickness.</summary>
    /// <param name="linearDensity">Mass per length as measured.</param>
    /// <param name="system">The system.</param>
    /// <returns>Null when no trade count of the system is listed.</returns>
    public static TradeCount? Nearest(LinearDensity linearDensity, CountSystem system) => All
        .Where(t => t.Count.System == system)
        .MinBy(t => Math.Abs(Math.Log(t.Count.Tex / linearDensity.Tex)));

    private static TradeCount Read(ImmutableDictionary<string, string> row) => new(
        YarnCount.Parse(row["count"], CountSystems.Parse(row["system"]).Value).Value,
        [.. row["fibres"].Split(',', StringSplitOptions.TrimEntries).Select(FibreCatalogue.Get)],
        int.Parse(row["usual"], CultureInfo.InvariantCulture));
}
