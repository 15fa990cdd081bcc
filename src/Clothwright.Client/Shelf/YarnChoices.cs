using System.Collections.Immutable;
using Clothwright.Client.Texts;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;

namespace Clothwright.Client.Shelf;

/// <summary>What can be chosen for a yarn, with its words.</summary>
internal static class YarnChoices
{
    /// <summary>Count systems, and none.</summary>
    public static IReadOnlyList<(string Value, string Word)> Systems(Phrases phrases) => [("", phrases["yarn.system.none"]), .. CountSystems.All.Select(s => (s.Name, phrases.Told(s.Name)))];

    /// <summary>Fibres by the names that people use, and any.</summary>
    public static IReadOnlyList<(string Value, string Word)> Fibres(Phrases phrases) => [("", phrases["search.any.fibre"]), .. FibreCatalogue.All.Select(f => (f.Id, phrases.Told(f.Name)))];

    /// <summary>A blend as it is written.</summary>
    public static string BlendText(ImmutableArray<FibreEntry> fibres) => fibres.Length switch
    {
        0 => "",
        1 => fibres[0].FibreId,
        _ => string.Join(", ", fibres.Select(f => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{f.MassShare.Percent:0.######} % {f.FibreId}"))),
    };

    /// <summary>A blend as it is read, fibres by their names for people.</summary>
    public static string BlendWords(FibreBlend blend, Phrases phrases) => blend.Shares.Length == 1
        ? phrases.Told(blend.Shares[0].Fibre.Name)
        : string.Join(", ", blend.Shares.Select(s => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{s.MassShare.Percent:0.#} % {phrases.Told(s.Fibre.Name)}")));

    /// <summary>A blend as it is kept.</summary>
    public static ImmutableArray<FibreEntry> Entries(FibreBlend blend) => [.. blend.Shares.Select(s => new FibreEntry(s.Fibre.Id, s.MassShare))];

    /// <summary>Yarn on a package by what it weighs, without its support; 0 where the support is heavier.</summary>
    public static Mass Net(YarnPackage package) => package.Tare < package.GrossMass ? package.GrossMass - package.Tare : Mass.Zero;
}
