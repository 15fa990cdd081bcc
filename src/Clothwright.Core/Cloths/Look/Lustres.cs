using System.Collections.Immutable;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Cloths.Look;

/// <summary>Lustre by fibre and construction.</summary>
/// <remarks>
/// Reeled silk, linen and polyester filament stand on the presets of Sadeghi et al. 2013; the others are placed between them by eye,
/// common practice, no source. Reflectance from the mean of the refractive indices along and across the fibre (from memory of
/// Morton and Hearle).
/// </remarks>
public static class Lustres
{
    /// <summary>Silk reeled from the cocoon.</summary>
    public static Lustre SilkReeled { get; } = Lustre.Of("silk, reeled", 5, 10, 0.20, 0.048, 0, 0.015);

    /// <summary>Silk spun from short lengths.</summary>
    public static Lustre SilkSpun { get; } = Lustre.Of("silk, spun", 12, 24, 0.40, 0.048, 0.10, 0.05);

    /// <summary>Viscose, of bamboo or wood; modal.</summary>
    public static Lustre Viscose { get; } = Lustre.Of("viscose", 8, 18, 0.30, 0.044, 0.05, 0.02);

    /// <summary>Lyocell.</summary>
    public static Lustre Lyocell { get; } = Lustre.Of("lyocell", 7, 16, 0.28, 0.045, 0.05, 0.02);

    /// <summary>Cotton treated with lye under tension.</summary>
    public static Lustre CottonMercerised { get; } = Lustre.Of("cotton, mercerised", 9, 20, 0.35, 0.047, 0.03, 0.02);

    /// <summary>Cotton as it grows.</summary>
    public static Lustre Cotton { get; } = Lustre.Of("cotton", 16, 34, 0.55, 0.047, 0.15, 0.05);

    /// <summary>Wool and hair of medium lustre.</summary>
    public static Lustre Wool { get; } = Lustre.Of("wool", 18, 36, 0.55, 0.046, 0.30, 0.06);

    /// <summary>Mohair, lustrous and hairy.</summary>
    public static Lustre Mohair { get; } = Lustre.Of("mohair", 10, 22, 0.40, 0.046, 0.45, 0.06);

    /// <summary>Linen, and hemp and ramie after it.</summary>
    public static Lustre Linen { get; } = Lustre.Of("linen", 12, 24, 0.30, 0.048, 0.10, 0.10);

    /// <summary>Smooth man-made filament.</summary>
    public static Lustre Filament { get; } = Lustre.Of("filament", 2.5, 5, 0.10, 0.045, 0, 0.01);

    /// <summary>Metallised film.</summary>
    public static Lustre Metal { get; } = Lustre.Of("metallic", 3, 3, 0, 0.75, 0, 0) with { BodyShare = 0.1, IsMetal = true };

    /// <summary>Chenille.</summary>
    public static Lustre Chenille { get; } = Lustre.Of("chenille", 18, 36, 1, 0.04, 1, 0.06) with { IsPile = true };

    private static readonly (string Fibre, Lustre Lustre)[] ByFibre =
    [
        ("silk-reeled", SilkReeled), ("silk-spun", SilkSpun), ("cotton", Cotton), ("cotton-mercerised", CottonMercerised), ("linen", Linen),
        ("hemp", Linen), ("ramie", Linen), ("viscose", Viscose), ("bamboo-viscose", Viscose), ("modal", Viscose), ("lyocell", Lyocell),
        ("acetate", Viscose), ("mohair", Mohair), ("metallised-film", Metal), ("nylon", Viscose), ("polyester", Viscose), ("acrylic", Wool),
    ];

    /// <summary>Every kind, by name.</summary>
    public static ImmutableArray<Lustre> All { get; } =
        [SilkReeled, SilkSpun, Viscose, Lyocell, CottonMercerised, Cotton, Wool, Mohair, Linen, Filament, Metal, Chenille];

    /// <summary>Lustre of a yarn: of a blend the mean by mass, hairiness by construction.</summary>
    /// <param name="yarn">The yarn.</param>
    public static Lustre Of(Yarn yarn)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        if (yarn.Construction == YarnConstruction.Chenille) return Chenille;
        (Lustre Lustre, double Share)[] parts = [.. yarn.Fibres.Shares.Select(s => (Of(s.Fibre, yarn.Construction), s.MassShare.Value))];
        Lustre most = parts.MaxBy(p => p.Share).Lustre;
        Lustre mixed = parts.Length == 1 ? most : most with
        {
            Name = string.Join(" and ", parts.Select(p => p.Lustre.Name).Distinct()),
            GlossWidthRadians = Mean(l => l.GlossWidthRadians),
            BodyWidthRadians = Mean(l => l.BodyWidthRadians),
            Evenness = Mean(l => l.Evenness),
            Reflectance = Mean(l => l.Reflectance),
            Fuzz = Mean(l => l.Fuzz),
            Slub = Mean(l => l.Slub),
            BodyShare = Mean(l => l.BodyShare),
        };
        return yarn.Construction switch
        {
            YarnConstruction.Boucle => mixed with { Fuzz = Math.Max(mixed.Fuzz, 0.5), Slub = Math.Max(mixed.Slub, 0.18) },
            YarnConstruction.Singles => mixed with { Slub = mixed.Slub * 1.3 },
            YarnConstruction.Ribbon => mixed with { Fuzz = 0, Slub = 0 },
            _ => mixed,
        };

        double Mean(Func<Lustre, double> of) => parts.Sum(p => of(p.Lustre) * p.Share);
    }

    private static Lustre Of(Fibre fibre, YarnConstruction construction)
    {
        if (construction == YarnConstruction.Reeled && fibre.Family == FibreFamily.Silk) return SilkReeled;
        if (construction is YarnConstruction.Filament or YarnConstruction.Monofilament && fibre.Family is FibreFamily.Synthetic or FibreFamily.Acetate) return Filament;
        foreach ((string id, Lustre lustre) in ByFibre)
        {
            if (id == fibre.Id) return lustre;
        }

        return fibre.Family == FibreFamily.Film ? Metal : Wool;
    }
}
