using System.Text;
using System.Text.RegularExpressions;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Rules;

/// <summary>Writes the tables of the pages of rules from what the program shows; what stands round them is kept.</summary>
internal static partial class RulePages
{
    private const string Begin = "<!-- from the program -->";

    private const string End = "<!-- to here -->";

    // By the folder of the sources in which a rule is made.
    private static readonly (string Page, string[] Folders)[] ByFolder =
    [
        ("yarns.md", ["Clothwright.Core/Yarns/"]),
        ("setts.md", ["Clothwright.Core/Setts/"]),
        ("cloths.md", ["Clothwright.Core/Cloths/", "Clothwright.Core/Calibration/"]),
        ("weaves.md", ["Clothwright.Core/Weaves/"]),
        ("photographs.md", ["Clothwright.Core/Photographs/"]),
        ("plans.md", ["Clothwright.Core/Plans/", "Clothwright.Core/Looms/", "Clothwright.Core/Worksheets/"]),
    ];

    /// <summary>The pages.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. ByFolder.Select(p => p.Page), "values.md", "fibres.md"];

    /// <summary>A page with its table as it has to be.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <param name="text">The page as it stands.</param>
    /// <param name="harvest">What the program shows.</param>
    public static string Renewed(string name, string text, RuleHarvest harvest)
    {
        int from = text.IndexOf(Begin, StringComparison.Ordinal);
        int to = text.IndexOf(End, StringComparison.Ordinal);
        if (from < 0 || to < from) throw new InvalidOperationException($"{name} has no \"{Begin}\" with \"{End}\" after it.");
        string table = name switch { "values.md" => Values(harvest), "fibres.md" => Fibres(), _ => Rules(name, harvest) };
        return $"{text[..from]}{Begin}\n{table}{text[to..]}";
    }

    /// <summary>The page on which a rule stands.</summary>
    /// <param name="rule">The rule.</param>
    public static string PageOf(Rule rule)
    {
        string file = RuleSources.FileOf(rule.Name, rule.Formula) ?? (CountSystems.All.Any(s => s.Title == rule.Name) ? "Clothwright.Core/Yarns/" : "Clothwright.Core/Weaves/");
        return ByFolder.First(p => p.Folders.Any(f => file.StartsWith(f, StringComparison.Ordinal))).Page;
    }

    /// <summary>A formula as it is written whatever the figures, and the same with figures that change left out.</summary>
    public static string Skeleton(string formula) => Figure().Replace(formula, "…");

    private static string Rules(string page, RuleHarvest harvest)
    {
        var text = new StringBuilder("| rule | formula | source |\n| --- | --- | --- |\n");
        foreach (var same in harvest.Rules.Where(r => PageOf(r) == page).GroupBy(r => (r.Name, Formula: Skeleton(r.Formula), r.Source)).OrderBy(g => g.Key.Name, StringComparer.OrdinalIgnoreCase).ThenBy(g => g.Key.Formula, StringComparer.Ordinal))
        {
            text.Append($"| {Cell(same.Key.Name)} | {Cell(Common([.. same.Select(r => r.Formula).Order(StringComparer.Ordinal)]))} | {Cell(same.Key.Source.Name)} |\n");
        }

        return text.ToString();
    }

    // Figures that differ from use to use become an ellipsis, those that never do are part of the rule.
    private static string Common(string[] formulas)
    {
        string[][] figures = [.. formulas.Select(f => Figure().Matches(f).Select(m => m.Value).ToArray())];
        int place = 0;
        return Figure().Replace(formulas[0], match =>
        {
            int at = place++;
            return figures.All(f => f[at] == match.Value) ? match.Value : "…";
        });
    }

    private static string Values(RuleHarvest harvest)
    {
        var text = new StringBuilder("| value | what is reckoned with | likely | source |\n| --- | --- | --- | --- |\n");
        HashSet<string> ofFibres = [.. new RuleHarvest().Of(FibreCatalogue.All).Values.Select(v => v.Label)];
        foreach (Working value in harvest.Values.Where(v => IsOfTheTrade(v) && !ofFibres.Contains(v.Label)).Concat(Shares()).DistinctBy(v => (v.Label, v.Rule.Formula, v.Rule.Source)).OrderBy(v => v.Label, StringComparer.OrdinalIgnoreCase).ThenBy(v => v.BaseValue))
        {
            bool isRange = value.Rule.Formula.StartsWith("middle of ", StringComparison.Ordinal);
            string likely = value.Spread.StandardDeviation == 0 || isRange ? "" : $"{At(value, value.Lower95)} to {At(value, value.Upper95)}";
            string formula = value.Rule.Formula == "as given" ? value.Format() : value.Rule.Formula;
            text.Append($"| {Cell(value.Label)} | {Cell(formula)} | {likely} | {Cell(value.Rule.Source.Name)} |\n");
        }

        return text.ToString();
    }

    // What the exercises themselves measure belongs to nobody; shares for a purpose follow below, unscaled by the weave.
    private static bool IsOfTheTrade(Working value) =>
        value.Rule.Source.Kind is not (SourceKind.Derivation or SourceKind.Definition)
        && !value.Label.StartsWith("share for the purpose", StringComparison.Ordinal)
        && !value.Label.StartsWith("felting class", StringComparison.Ordinal)
        && value.Label is not (RuleExercises.Needed or RuleExercises.Charts);

    private static IEnumerable<Working> Shares() =>
    [
        .. ((ClothPurpose[])[ClothPurpose.Airy, ClothPurpose.Drape, ClothPurpose.Everyday, ClothPurpose.Firm])
            .Select(p => PurposeShare.Balanced(p).Middle($"share of the maximum, {ClothPurposeText.Word(p)}, plain weave").Working),
        PurposeShare.Covering.Middle("share of threads touching, the system that shows").Working,
        PurposeShare.Hidden.Middle("share of the plain weave maximum, the system that is hidden").Working,
    ];

    private static string Fibres()
    {
        var text = new StringBuilder();
        foreach (Fibre fibre in FibreCatalogue.All)
        {
            text.Append($"### {char.ToUpperInvariant(fibre.Name[0])}{fibre.Name[1..]}\n\n{fibre.Note}\n\n| what | value | likely | source |\n| --- | --- | --- | --- |\n");
            Row("density of the solid fibre", fibre.Density);
            Row("share of a spun yarn that is fibre", fibre.Packing);
            Row("agreed regain, United States", fibre.CommercialRegainUnitedStates);
            Row("agreed allowance, European Union", fibre.CommercialRegainEurope);
            Row("regain in a room of 65 % humidity", fibre.RoomRegain);
            Row("stretch at break", fibre.Elongation);
            Row("strength when wet, of dry", fibre.WetStrength);
            Row("shrinkage in the first washing, each way", fibre.WashingShrinkage);
            text.Append('\n');
        }

        return text.ToString();

        void Row(string what, IDerived value)
        {
            Working working = value.Working;
            string likely = working.Spread.StandardDeviation == 0 ? "" : $"{At(working, working.Lower95)} to {At(working, working.Upper95)}";
            text.Append($"| {what} | {working.Format()} | {likely} | {Cell(working.Rule.Source.Name)} |\n");
        }
    }

    private static string At(Working working, double baseValue) => QuantityText.Format(working.Kind, baseValue, UnitStyle.Metric);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);

    [GeneratedRegex(@"\d+(?:\.\d+)?")]
    private static partial Regex Figure();
}
