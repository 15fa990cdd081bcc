using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The yarns a plan takes.</summary>
internal static class MaterialsText
{
    /// <summary>A table of yarns and what stands beside it.</summary>
    public static ImmutableArray<HandoutBlock> Of(PlanResult plan, HandoutOptions options)
    {
        var table = new TableBlock(
            [
                new TableColumn("Yarn"),
                new TableColumn("Made of"),
                new TableColumn("Warp", true),
                new TableColumn("Weft", true),
                new TableColumn("Mass", true),
                new TableColumn("Have ready", true),
                new TableColumn("Packages"),
            ],
            [.. plan.Yarns.Select(need => Row(need, options))]);
        return
        [
            table,
            new ParagraphBlock(
                "Mass is the best estimate with loom waste, sample, joins and tails. Have ready is what suffices in 95 of 100 cases: buy and weigh by that."),
        ];
    }

    private static TableRow Row(YarnNeed need, HandoutOptions options) => new(
        [
            need.Yarn.Name,
            $"{Made(need.Yarn.Fibres)}, {Words.Metric(need.Yarn.LinearDensity)}",
            Long(need.Warp.Value),
            Long(need.Weft.Value),
            Words.Metric(need.Mass),
            QuantityText.Format(QuantityKind.Mass, need.Mass.Upper95.Kilograms, UnitStyle.Metric),
            Packages(need, options),
        ],
        need.Yarn.Colour);

    private static string Made(FibreBlend blend) => blend.IsPure
        ? blend.Shares[0].Fibre.Name
        : string.Join(", ", blend.Shares.Select(s => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{s.MassShare.Percent:0} % {s.Fibre.Name}")));

    private static string Long(Length length) => length > Length.Zero ? QuantityText.Format(QuantityKind.Length, length.Metres, UnitStyle.Metric) : "–";

    private static string Packages(YarnNeed need, HandoutOptions options)
    {
        PackageChoice choice = need.Packages;
        var parts = new List<string>();
        if (!choice.FromShelf.IsEmpty) parts.Add($"open {Words.Spelled(choice.FromShelf.Length)} from the shelf");
        if (choice.Missing > Mass.Zero)
        {
            parts.Add("the shelf does not suffice");
        }
        else if (choice.NewPackages.Value.Count > 0 && need.Yarn.Offer is { } offer)
        {
            int count = choice.NewPackages.Value.Count;
            string form = offer.Form.ToString().ToLowerInvariant() + (count == 1 ? "" : "s");
            string price = choice.Cost is { } cost && options.Currency.Length > 0 ? $", {Words.Metric(cost)} {options.Currency}" : "";
            parts.Add($"buy {Words.Spelled(count)} {form} of {QuantityText.Format(QuantityKind.Mass, offer.NetMass.Kilograms, UnitStyle.Metric)}{price}");
        }

        return Words.Sentence(string.Join("; ", parts));
    }
}
