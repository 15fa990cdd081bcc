using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Reads the table of fibres that is part of this assembly.</summary>
internal static class FibreTable
{
    /// <summary>All fibres, in the order of the table.</summary>
    public static ImmutableArray<Fibre> Read()
    {
        var sources = new Dictionary<string, Source>(StringComparer.Ordinal);
        var fibres = ImmutableArray.CreateBuilder<Fibre>();
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string line in EmbeddedTable.Lines("fibres.table.txt"))
        {
            string[] cells = line.Split('|', 2, StringSplitOptions.TrimEntries);
            if (cells[0] == "source")
            {
                string[] source = cells[1].Split('|', 2, StringSplitOptions.TrimEntries);
                sources.Add(source[0], SourceText.Read(source[1]));
                continue;
            }

            if (cells[0] == "fibre" && fields.Count > 0)
            {
                fibres.Add(Make(fields, sources));
                fields.Clear();
            }

            fields.Add(cells[0], cells[1]);
        }

        fibres.Add(Make(fields, sources));
        return fibres.ToImmutable();
    }

    private static Fibre Make(Dictionary<string, string> fields, Dictionary<string, Source> sources)
    {
        string[] names = fields["fibre"].Split('|', 2, StringSplitOptions.TrimEntries);
        string name = names[1];
        Derived<Ratio> Percent(string field, string label) => InRatio($"{label} of {name}", Cell(fields[field], sources), 0.01);
        Derived<Ratio> Plain(string field, string label) => InRatio($"{label} of {name}", Cell(fields[field], sources), 1);
        Derived<Density> GramsPerCubicCentimetre(string field, string label) => InDensity($"{label} of {name}", Cell(fields[field], sources));

        (double packingLow, double packingHigh, _, _) = Cell(fields["packing"], sources);
        (RelaxationClass relaxation, Derived<Ratio> shrinkage) = Shrinkage(name, fields["relaxation"], fields.GetValueOrDefault("washing"), sources);
        FeltingClass felting = Enum.Parse<FeltingClass>(fields["felting"], ignoreCase: true);
        return new Fibre(
            names[0],
            name,
            GramsPerCubicCentimetre("density", "density"),
            Plain("packing", "packing"),
            Percent("regain-us", "agreed regain, United States,"),
            Percent("regain-eu", "agreed allowance, European Union,"),
            Percent("regain-room", "regain at 65 % r.h."),
            Plain("tenacity", "tenacity, cN/tex,"),
            Percent("elongation", "stretch at break"),
            Percent("wet", "wet strength"),
            shrinkage,
            felting >= FeltingClass.Slight)
        {
            Synonyms = [.. fields["also"].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)],
            DryDensity = fields.ContainsKey("density-dry") ? GramsPerCubicCentimetre("density-dry", "bone-dry density") : null,
            PackingLow = Ratio.FromValue(packingLow),
            PackingHigh = Ratio.FromValue(packingHigh),
            Family = Enum.Parse<FibreFamily>(fields["family"], ignoreCase: true),
            Relaxation = relaxation,
            Felting = felting,
            Note = fields["note"],
        };
    }

    private static Derived<Ratio> InRatio(string label, (double Low, double High, double Deviation, Source Source) cell, double unit) => cell.High > cell.Low
        ? Derived.FromRange(label, Ratio.FromValue(cell.Low * unit), Ratio.FromValue(cell.High * unit), cell.Source)
        : Derived.Given(label, Ratio.FromValue(cell.Low * unit), cell.Source, cell.Deviation * unit);

    private static Derived<Density> InDensity(string label, (double Low, double High, double Deviation, Source Source) cell) => cell.High > cell.Low
        ? Derived.FromRange(label, Density.FromGramsPerCubicCentimetre(cell.Low), Density.FromGramsPerCubicCentimetre(cell.High), cell.Source)
        : Derived.Given(label, Density.FromGramsPerCubicCentimetre(cell.Low), cell.Source, cell.Deviation);

    private static (double Low, double High, double Deviation, Source Source) Cell(string cell, Dictionary<string, Source> sources)
    {
        string[] parts = cell.Split('@', StringSplitOptions.TrimEntries);
        string[] deviation = parts[0].Split('±', StringSplitOptions.TrimEntries);
        double[] edges = [.. deviation[0].Split('-').Select(e => double.Parse(e, CultureInfo.InvariantCulture))];
        return (edges[0], edges[^1], deviation.Length > 1 ? double.Parse(deviation[1], CultureInfo.InvariantCulture) : 0, sources[parts[1]]);
    }

    // Low under 4 %, medium 4-8 %, high 8-15 %; a class between two spans the middles of both (low-medium 2-6, medium-high 6-12).
    private static (RelaxationClass Class, Derived<Ratio> Shrinkage) Shrinkage(string name, string cell, string? washing, Dictionary<string, Source> sources)
    {
        string[] parts = cell.Split('@', StringSplitOptions.TrimEntries);
        (RelaxationClass relaxation, double low, double high) = parts[0] switch
        {
            "none" => (RelaxationClass.None, 0.0, 0.0),
            "low" => (RelaxationClass.Low, 0.0, 4.0),
            "low-medium" => (RelaxationClass.LowToMedium, 2.0, 6.0),
            "medium" => (RelaxationClass.Medium, 4.0, 8.0),
            "medium-high" => (RelaxationClass.MediumToHigh, 6.0, 12.0),
            "high" => (RelaxationClass.High, 8.0, 15.0),
            var other => throw new InvalidOperationException($"\"{other}\" is not a class of shrinkage."),
        };
        string label = $"washing shrinkage of {name}";
        Source source = sources[parts[1]];
        if (washing is not null) (low, high, _, source) = Cell(washing, sources);
        return (relaxation, high > 0
            ? Derived.FromHabit(label, Ratio.FromPercent(low), Ratio.FromPercent(high), source)
            : Derived.Given(label, Ratio.Zero, source));
    }
}
