using System.Collections.Immutable;
using System.CommandLine;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;
using Clothwright.Storage;

namespace Clothwright.Cli.Shelf;

/// <summary><c>clothwright shelf use</c>: takes yarn that was used off its packages, or weighs one.</summary>
internal sealed class ShelfUseCommand : ShelfCommand
{
    private readonly Argument<string> _id = new("id") { Description = "The yarn by its short name, as shelf list prints it." };
    private readonly Option<string?> _mass = new("--mass") { Description = "What was used, for example 120g; begun packages first." };
    private readonly Option<string?> _weighed = new("--weighed") { Description = "What one package weighs now, support and all, for example 143g." };
    private readonly Option<string?> _tare = new("--tare") { Description = "What its empty support weighs; what is usual if left out." };
    private readonly Option<double?> _humidity = new("--humidity") { Description = "Relative humidity of the room in percent; 65 is taken if left out." };
    private readonly Option<int?> _package = new("--package") { Description = "Which package, counted from 1; the only one if left out." };

    /// <summary>The command.</summary>
    public ShelfUseCommand()
        : base("use", "Takes yarn that was used off the shelf, or weighs a package to see what is left.")
    {
        Arguments.Add(_id);
        foreach (Option option in (Option[])[_mass, _weighed, _tare, _humidity, _package]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override async Task<Report> WorkAsync(Studio studio, ParseResult input)
    {
        string id = input.GetValue(_id)!;
        Kept<YarnEntry> kept = await studio.Shelf.FindAsync(id) ?? throw Problem("id", $"There is no yarn \"{id}\" on the shelf.", "See shelf list for the short names.");
        int? place = input.GetValue(_package) - 1;
        ImmutableArray<YarnPackage> packages = (input.GetValue(_mass), input.GetValue(_weighed)) switch
        {
            ({ } mass, null) => StockUse.Take(kept.Item.Packages, MassText.Parse(mass, "--mass").Value, place).Value,
            (null, { } weighed) => Weighed(kept.Item.Packages, place, MassText.Parse(weighed, "--weighed").Value, input),
            _ => throw Problem("command line", "Say either what was used or what a package weighs now.", "Give --mass 120g, or --weighed 143g."),
        };
        YarnEntry entry = kept.Item with { Packages = packages };
        Yarn yarn = entry.ToYarn(id).Value;
        FreeStock free = ShelfYarnReport.Free(yarn, await studio.Reservations.ListAsync());
        SaveOutcome outcome = await studio.Shelf.KeepAsync(entry, kept.Version);
        if (outcome is not SaveOutcome.Saved saved) throw Problem("id", $"\"{id}\" was changed by something else in this moment.", "Run the command again.");
        return new Report("Left: " + ShelfYarnReport.Text(entry, yarn, free) + ".", ShelfYarnReport.Json(new Kept<YarnEntry>(saved.Version, entry), yarn, free));
    }

    private ImmutableArray<YarnPackage> Weighed(ImmutableArray<YarnPackage> packages, int? place, Mass gross, ParseResult input)
    {
        int at = place ?? (packages.Length == 1 ? 0 : throw Problem("--package", $"There are {packages.Length} packages.", "Say which was weighed, for example --package 2."));
        if (at < 0 || at >= packages.Length) throw Problem("--package", $"There is no package {at + 1}; there are {packages.Length}.", "Count the packages from 1.");
        if (input.GetValue(_humidity) is < 0 or > 100) throw Problem("--humidity", $"{input.GetValue(_humidity)} % is no humidity.", "Give 0 to 100, for example 45.");
        YarnPackage before = packages[at];
        Mass usual = UsualSupport.Of(before.Form, gross).Value;
        bool known = input.GetValue(_tare) is not null || before is { Basis: MassBasis.Weighed, Tare.Grams: > 0 } || usual == Mass.Zero;
        Mass tare = input.GetValue(_tare) is { } given ? MassText.Parse(given, "--tare").Value : known ? before.Tare : usual;
        if (tare > gross) throw Problem("--tare", $"The empty support weighs {tare}, more than the {gross} of the whole package.", "Weigh the empty support again.");
        return packages.SetItem(at, before with
        {
            GrossMass = gross,
            Tare = tare,
            Basis = known ? MassBasis.Weighed : MassBasis.UsualSupport,
            RelativeHumidity = input.GetValue(_humidity) is { } percent ? Ratio.FromPercent(percent) : null,
        });
    }

    private static InputProblemException Problem(string where, string what, string mend) => new(new InputProblem(what, where, mend));
}
