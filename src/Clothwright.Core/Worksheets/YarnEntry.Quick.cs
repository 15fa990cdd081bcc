using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Worksheets;

public sealed partial record YarnEntry
{
    /// <summary>The most packages that one entry may put on the shelf.</summary>
    public const int MostPackages = 500;

    /// <summary>The yarn that free words told about, to be looked over before it is kept.</summary>
    /// <param name="quick">What the words told.</param>
    /// <param name="id">Its id on the shelf.</param>
    /// <remarks>A count whose system has to be asked stands without system; a yarn whose fibre was not told stands without fibres.</remarks>
    public static YarnEntry FromWords(QuickYarn quick, string id)
    {
        ArgumentNullException.ThrowIfNull(quick);
        return new YarnEntry
        {
            Id = id,
            Name = NameOf(quick),
            Count = quick.Label is null ? (quick.Count?.Taken?.Label ?? quick.Count?.From) : null,
            CountSystem = quick.Label is null && quick.Count?.Taken is { } taken ? taken.System.Definition().Name : null,
            Label = quick.Label?.Value.ToString(),
            Fibres = quick.Fibres is { } blend ? [.. blend.Value.Shares.Select(s => new FibreEntry(s.Fibre.Id, s.MassShare))] : [],
            Construction = quick.Construction.Value,
            Colour = quick.Colour.Value,
            Packages = Stock(quick),
            Offer = quick is { Price: { } price, PackageMass: { } net } && net.Value > Mass.Zero ? new YarnOffer(quick.Form.Value, net.Value, price.Value) : null,
        };
    }

    private static string NameOf(QuickYarn quick)
    {
        string size = quick.Label?.From ?? quick.Count?.From ?? "";
        string fibre = quick.Fibres?.Value is { } blend ? string.Join(" and ", blend.Shares.Select(s => Short(s.Fibre))) : "";
        string yarn = string.Join(' ', new[] { size, fibre }.Where(w => w.Length > 0));
        string[] parts = [.. new[] { yarn, quick.ColourName?.Value ?? "" }.Where(w => w.Length > 0)];
        return parts.Length > 0 ? string.Join(", ", parts) : quick.Words.Trim();
    }

    private static string Short(Fibre fibre) => fibre.Id switch
    {
        "bamboo-viscose" => "bamboo",
        "wool-worsted" or "wool-woollen" => "wool",
        "silk-spun" or "silk-reeled" => "silk",
        var id => id.Replace('-', ' '),
    };

    private static ImmutableArray<YarnPackage> Stock(QuickYarn quick)
    {
        string? lot = quick.Lot?.Value;
        if (quick.MassLeft is { } left) return left.Value > Mass.Zero ? [Told(quick.Form.Value, left.Value, lot)] : [];
        if (quick.PackageMass is not { } each || each.Value == Mass.Zero) return [];
        double count = Math.Min(quick.Packages.Value, MostPackages);
        int whole = (int)Math.Floor(count);
        double part = count - whole;
        IEnumerable<YarnPackage> packages = Enumerable.Repeat(Told(quick.Form.Value, each.Value, lot), whole);
        return [.. part > 1e-6 ? packages.Append(Told(quick.Form.Value, each.Value * part, lot)) : packages];
    }

    private static YarnPackage Told(PackageForm form, Mass net, string? lot) => new(form, net, Mass.Zero) { Lot = lot, Basis = MassBasis.Told };
}
