using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Csv;

/// <summary>The yarns on a shelf as a table, one row a package; a yarn without a package has one row.</summary>
/// <remarks>
/// Columns, in SI units: id, name, linear_density_tex, linear_density_deviation_tex, fibres, construction, colour,
/// wraps_per_centimetre, wraps_counted (hand or geometric), package_form, gross_mass_g, tare_g, lot, relative_humidity_percent,
/// offer_form, offer_net_mass_g, offer_price, mass_by (weighed, usualsupport or told). Needed are id, linear_density_tex and fibres. What stands in the first row of a yarn
/// holds for the yarn; later rows of the same id add packages.
/// </remarks>
public static class YarnShelfTable
{
    /// <summary>Reads a shelf.</summary>
    /// <param name="text">The table; comma, semicolon or tab between the values.</param>
    /// <param name="limits">How large it may be; null for <see cref="ReadingLimits.Usual"/>.</param>
    /// <returns>The yarns in the order of their first rows, or the problem with line and column.</returns>
    public static Parsed<ImmutableArray<Yarn>> Read(string text, ReadingLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            CsvTable table = CsvTable.Read(text, limits ?? ReadingLimits.Usual, YarnColumns.Id, YarnColumns.LinearDensity, YarnColumns.Fibres);
            var reader = new YarnShelfReader();
            foreach (CsvRow row in table.Rows) reader.Take(new CsvCells(table, row));
            return reader.Yarns();
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }

    /// <summary>Writes a shelf. Values that a spreadsheet would run as a formula are guarded.</summary>
    /// <param name="yarns">The yarns.</param>
    public static string Write(IEnumerable<Yarn> yarns)
    {
        ArgumentNullException.ThrowIfNull(yarns);
        return CsvText.Write(YarnColumns.All, yarns.SelectMany(YarnShelfRows.Of));
    }
}
