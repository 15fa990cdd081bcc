using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;

namespace Clothwright.Interchange.Csv;

/// <summary>The packages that one row of a table of yarns tells.</summary>
internal static class MappedPackages
{
    /// <exception cref="InputProblemException">The support weighs more than the package, or there are too many packages.</exception>
    public static ImmutableArray<YarnPackage> Of(MappedCells row, PackageForm form, Mass? net, YarnEntry spoken)
    {
        string lot = row.Text(YarnColumnRole.Lot);
        double? count = row.Number(YarnColumnRole.Packages, YarnEntry.MostPackages);
        if (row.Mass(YarnColumnRole.GrossMass) is { } gross && gross > Mass.Zero) return Repeated(Weighed(row, form, gross), count ?? 1, lot);
        if (net is { Grams: > 0 } each) return Repeated(new YarnPackage(form, each, Mass.Zero) { Basis = MassBasis.Told }, count ?? 1, lot);
        if (spoken.Packages.IsEmpty) return [];
        return count is { } told ? Repeated(spoken.Packages[0], told, lot) : [.. spoken.Packages.Select(p => WithLot(p, lot))];
    }

    private static YarnPackage Weighed(MappedCells row, PackageForm form, Mass gross)
    {
        if (row.Mass(YarnColumnRole.Tare) is { } tare)
        {
            return tare <= gross
                ? new YarnPackage(form, gross, tare)
                : throw row.Problem(YarnColumnRole.Tare, $"The support weighs {tare}, more than the {gross} of package and support together.", "Weigh the empty support again.");
        }

        Mass usual = UsualSupport.Of(form, gross).Value;
        return usual < gross && usual > Mass.Zero ? new YarnPackage(form, gross, usual) { Basis = MassBasis.UsualSupport } : new YarnPackage(form, gross, Mass.Zero);
    }

    private static ImmutableArray<YarnPackage> Repeated(YarnPackage package, double count, string lot)
    {
        int whole = (int)Math.Floor(count);
        double part = count - whole;
        IEnumerable<YarnPackage> packages = Enumerable.Repeat(package, whole);
        if (part > 1e-6) packages = packages.Append(package with { GrossMass = package.Tare + Mass.FromKilograms((package.GrossMass.Kilograms - package.Tare.Kilograms) * part) });
        return [.. packages.Select(p => WithLot(p, lot))];
    }

    private static YarnPackage WithLot(YarnPackage package, string lot) => lot.Length == 0 ? package : package with { Lot = lot };
}
