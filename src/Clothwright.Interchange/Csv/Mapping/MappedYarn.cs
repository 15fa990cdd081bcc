using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;

namespace Clothwright.Interchange.Csv;

/// <summary>A yarn from one row: what its columns tell, and what their words tell where a column is missing.</summary>
internal static class MappedYarn
{
    /// <exception cref="InputProblemException">Something in the row cannot be read, or is missing.</exception>
    public static YarnEntry Of(MappedCells row)
    {
        QuickYarn? quick = Quick(row);
        YarnEntry spoken = quick is null ? Bare : YarnEntry.FromWords(quick, "");
        YarnEntry yarn = WithFineness(row, WithFibres(row, spoken, quick), quick) with
        {
            Id = Id(row),
            Name = Name(row, spoken),
            Construction = Construction(row, spoken),
            Colour = Colour(row, spoken),
        };
        PackageForm form = Form(row, quick);
        Mass? net = row.Mass(YarnColumnRole.NetMass);
        return Checked(row, yarn with { Packages = MappedPackages.Of(row, form, net, spoken), Offer = Offer(row, form, net, quick) ?? spoken.Offer });
    }

    private static YarnEntry Bare { get; } = new() { Id = "", Name = "", Fibres = [], Colour = Wif.WifConversion.Undyed };

    private static QuickYarn? Quick(MappedCells row)
    {
        YarnColumnRole[] told = [YarnColumnRole.Words, YarnColumnRole.Name, YarnColumnRole.ColourName];
        string words = string.Join(", ", told.Select(row.Text).Where(t => t.Length > 0));
        return words.Length is > 0 and <= QuickYarn.LongestText && QuickYarn.Read(row.Plain(words)).TryGet(out QuickYarn? quick) ? quick : null;
    }

    private static string Id(MappedCells row)
    {
        string id = row.Text(YarnColumnRole.Id);
        if (id.Length == 0) return "";
        Parsed<string> sound = RecordId.Parse(id);
        return sound.Succeeded ? id : throw row.Problem(YarnColumnRole.Id, sound.Problem.What, sound.Problem.Mend);
    }

    private static string Name(MappedCells row, YarnEntry spoken)
    {
        string name = row.Text(YarnColumnRole.Name);
        string colour = row.Text(YarnColumnRole.ColourName);
        if (name.Length == 0) name = spoken.Name;
        else if (colour.Length > 0 && !name.Contains(colour, StringComparison.OrdinalIgnoreCase)) name = $"{name}, {colour}";
        return name.Length > 0 ? name : throw row.Problem(YarnColumnRole.Name, "This yarn has no name.", "Say which column names it, or write its name.");
    }

    private static YarnEntry WithFibres(MappedCells row, YarnEntry yarn, QuickYarn? quick)
    {
        string text = row.Plain(row.Text(YarnColumnRole.Fibres));
        if (text.Length == 0)
        {
            return quick is { Fibres: not null, SharesAreGuessed: false }
                ? yarn
                : throw row.Problem(YarnColumnRole.Fibres, "Nothing says what this yarn is made of.", "Say which column names the fibre, or write it in the row, for example cotton.");
        }

        FibreBlend blend = FibreBlend.Parse(text).TryGet(out FibreBlend? read) ? read
            : QuickYarn.Read(text).TryGet(out QuickYarn? words) && words is { Fibres: { } found, SharesAreGuessed: false } ? found.Value
            : throw row.Problem(YarnColumnRole.Fibres, FibreBlend.Parse(text).Problem!.What, FibreBlend.Parse(text).Problem!.Mend);
        return yarn with { Fibres = [.. blend.Shares.Select(s => new FibreEntry(s.Fibre.Id, s.MassShare))] };
    }

    private static YarnEntry WithFineness(MappedCells row, YarnEntry yarn, QuickYarn? quick)
    {
        string label = row.Plain(row.Text(YarnColumnRole.Label));
        string count = row.Plain(row.Text(YarnColumnRole.Count));
        if (label.Length > 0)
        {
            Parsed<YarnLabel> printed = YarnLabel.Parse(label);
            return printed.TryGet(out YarnLabel? read) ? yarn with { Label = read.ToString(), Count = null, CountSystem = null } : throw row.Problem(YarnColumnRole.Label, printed.Problem!.What, printed.Problem.Mend);
        }

        if (count.Length > 0) return WithCount(row, yarn, count);
        bool told = quick is not null && (quick.Label is not null || quick.Count?.Taken is not null);
        // The fibre may stand in a column of its own and make the count of the name sure.
        if (!told && quick?.Count is { } asked) return WithCount(row, yarn, asked.From);
        return told ? yarn : throw row.Problem(YarnColumnRole.Count, "Nothing says how fine this yarn is.", "Say which column holds the count, or write it in the row, for example 8/2.");
    }

    private static YarnEntry WithCount(MappedCells row, YarnEntry yarn, string count)
    {
        string named = row.Text(YarnColumnRole.CountSystem) is { Length: > 0 } cell ? cell : row.Unit(YarnColumnRole.Count) ?? "";
        if (named.Length > 0)
        {
            Parsed<CountSystem> system = CountSystems.Parse(named);
            if (!system.TryGet(out CountSystem known)) throw row.Problem(YarnColumnRole.CountSystem, system.Problem!.What, system.Problem.Mend);
            Parsed<YarnCount> read = YarnCount.Parse(count, known);
            return read.Succeeded ? yarn with { Count = count, CountSystem = known.Definition().Name, Label = null } : throw row.Problem(YarnColumnRole.Count, read.Problem.What, read.Problem.Mend);
        }

        string fibres = string.Join(", ", yarn.Fibres.Select(f => $"{f.MassShare.Percent:0.##} % {f.FibreId}"));
        if (QuickYarn.Read($"{count} {fibres}").TryGet(out QuickYarn? quick) && quick.Count?.Taken is { } taken) return yarn with { Count = taken.Label, CountSystem = taken.System.Definition().Name, Label = null };
        Parsed<Core.Workings.Derived<LinearDensity>> size = YarnSize.Parse(count);
        return size.Succeeded ? yarn with { Count = count, CountSystem = null, Label = null } : throw row.Problem(YarnColumnRole.Count, size.Problem.What, size.Problem.Mend);
    }

    private static YarnConstruction Construction(MappedCells row, YarnEntry spoken)
    {
        string text = row.Text(YarnColumnRole.Construction);
        if (text.Length == 0) return spoken.Construction;
        foreach (YarnConstruction value in Enum.GetValues<YarnConstruction>())
        {
            if (text.Equals(value.ToString(), StringComparison.OrdinalIgnoreCase) || text.Equals(ConstructionNotes.Of(value).Name, StringComparison.OrdinalIgnoreCase)) return value;
        }

        return QuickYarn.Read(text).TryGet(out QuickYarn? quick) ? quick.Construction.Value : spoken.Construction;
    }

    private static SrgbColour Colour(MappedCells row, YarnEntry spoken)
    {
        string text = row.Text(YarnColumnRole.Colour);
        if (text.Length == 0) return spoken.Colour;
        Parsed<SrgbColour> colour = SrgbColour.Parse(text[0] == '#' ? text : $"#{text}");
        return colour.TryGet(out SrgbColour read) ? read : throw row.Problem(YarnColumnRole.Colour, colour.Problem!.What, colour.Problem.Mend);
    }

    private static PackageForm Form(MappedCells row, QuickYarn? quick)
    {
        string text = row.Text(YarnColumnRole.Form);
        if (text.Length == 0) return quick?.Form.Value ?? PackageForm.Cone;
        return QuickYarn.Read(text).TryGet(out QuickYarn? words) && !words.Form.IsAssumed
            ? words.Form.Value
            : throw row.Problem(YarnColumnRole.Form, $"\"{text}\" is no way to put yarn up.", "Write ball, skein, cone or tube.");
    }

    private static YarnOffer? Offer(MappedCells row, PackageForm form, Mass? net, QuickYarn? quick)
    {
        if (row.Number(YarnColumnRole.Price, 1e6) is not { } price) return null;
        Mass? each = net ?? quick?.PackageMass?.Value;
        return each is { Grams: > 0 } mass ? new YarnOffer(form, mass, Money.FromAmount(price)) : null;
    }

    private static YarnEntry Checked(MappedCells row, YarnEntry yarn)
    {
        Parsed<Yarn> read = yarn.ToYarn();
        return read.Succeeded ? yarn : throw row.Problem(YarnColumnRole.Name, read.Problem.What, read.Problem.Mend);
    }
}
