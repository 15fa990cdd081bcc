using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Clothwright.Core.Yarns;

/// <summary>Count or label in free words, and in which system a count is to be read.</summary>
internal static class QuickFineness
{
    /// <summary>Length and mass as printed, as in <c>400 m / 100 g</c> or <c>1450 yd/lb</c>.</summary>
    public static QuickFound<YarnLabel>? Label(QuickText text)
    {
        Match? match = text.Take(QuickPatterns.Label()) ?? text.Take(QuickPatterns.LengthPerMass());
        if (match is null) return null;
        string written = Plain(match.Value);
        return YarnLabel.Parse(written).TryGet(out YarnLabel? label) ? new QuickFound<YarnLabel>(label, text.Words(match)) : null;
    }

    /// <summary>The count with every system that it can be read in, and the one that its fibres make sure.</summary>
    public static QuickCount? Count(QuickText text, FibreBlend? fibres)
    {
        if (text.Take(QuickPatterns.Count()) is not { } match) return null;
        CountSystem? named = text.Take(QuickPatterns.System()) is { } said ? SystemOf(said.Groups["system"].Value) : null;
        string written = text.Words(match);
        ImmutableArray<YarnCount> readings = YarnCount.Readings(match.Value);
        if (named is { } system && YarnCount.Parse(match.Value, system).TryGet(out YarnCount? read)) return new QuickCount(written, [read], read, QuickCountGround.Named);
        if (readings.IsEmpty) return null;
        if (readings.Length == 1) return new QuickCount(written, readings, readings[0], match.Value.Any(char.IsLetter) ? QuickCountGround.Named : QuickCountGround.OnlyReading);
        return fibres is not null && Customary(readings, fibres) is { } usual
            ? new QuickCount(written, [usual, .. readings.Where(r => r != usual)], usual, QuickCountGround.CustomOfTheFibre)
            : new QuickCount(written, readings, null, QuickCountGround.ToBeAsked);
    }

    // The trade sells this very count of this fibre in one system only; failing that, the fibre itself in one system only.
    private static YarnCount? Customary(ImmutableArray<YarnCount> readings, FibreBlend fibres)
    {
        TradeCount[] sold = [.. TradeCounts.All.Where(t => fibres.Shares.All(s => t.Fibres.Any(f => f.Id == s.Fibre.Id)))];
        CountSystem[] ofCount = [.. sold.Where(t => readings.Any(r => r.System == t.Count.System && r.Number == t.Count.Number && r.Plies == t.Count.Plies)).Select(t => t.Count.System).Distinct()];
        CountSystem[] ofFibre = [.. sold.Select(t => t.Count.System).Distinct()];
        CountSystem? only = ofCount.Length == 1 ? ofCount[0] : ofCount.Length == 0 && ofFibre.Length == 1 ? ofFibre[0] : OfItsName(fibres);
        return readings.FirstOrDefault(r => r.System == only);
    }

    // Counts of cotton and linen yarn are named after their fibre.
    private static CountSystem? OfItsName(FibreBlend fibres) => fibres is { IsPure: true, Shares: [var only] }
        ? only.Fibre.Family == FibreFamily.Cotton ? CountSystem.Cotton : only.Fibre.Id == "linen" ? CountSystem.Linen : null
        : null;

    private static CountSystem? SystemOf(string word) => word.ToLowerInvariant() switch
    {
        "baumwoll" => CountSystem.Cotton,
        "kammgarn" => CountSystem.Worsted,
        "leinen" => CountSystem.Linen,
        "metrisch" or "metrische" => CountSystem.Metric,
        "woollen" => CountSystem.WoollenRun,
        "english silk" => CountSystem.SilkEnglish,
        var name => CountSystems.Parse(name).TryGet(out CountSystem system) ? system : null,
    };

    private static string Plain(string label) =>
        label.Replace(" zu ", " per ", StringComparison.OrdinalIgnoreCase).Replace(" auf ", " per ", StringComparison.OrdinalIgnoreCase).Replace(" to ", " per ", StringComparison.OrdinalIgnoreCase)
            .Replace("ypp", "yd/lb", StringComparison.OrdinalIgnoreCase).Replace("gramm", "grams", StringComparison.OrdinalIgnoreCase);
}
