using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Setts.Diameters;

/// <summary>Ashenhurst's K of a yarn, by fibre and construction.</summary>
/// <remarks>
/// K stands for a bulk density (0.979 K² g/cm³), so the K of a blend is found by sharing out volume, and a fibre without a
/// published K gets it from its density and packing.
/// </remarks>
public static class AshenhurstK
{
    private static readonly Source Essay = Source.Published("handweaving essay citing Ashenhurst and Watson");

    // Spread: cotton is quoted at 0.90 to 0.95, and packing of one class of yarn moves K by 2 to 6 % (Hearle, Grosberg & Backer, from memory).
    private static readonly Derived<Number> Smooth = Known("K of cotton, linen, silk and their like", 0.92, 0.02);
    private static readonly Derived<Number> Worsted = Known("K of worsted-spun wool and hair", 0.90, 0.025);
    private static readonly Derived<Number> Woollen = Known("K of woollen-spun wool", 0.84, 0.03);

    // Yarn for hand knitting as it lies round a ruler: 16 to 18 wraps at 2000 to 2400 yards per pound, 9 to 11 at 800 to 1000, 6 to 8 at
    // 400 to 500. By hand wraps = 0.7 K √(yards per pound) that is a K of 0.47 to 0.53, 0.55 of the 0.90 of worsted yarn spun for
    // weaving. Pressed between reed and beater it lies anywhere from there to the weaving yarn.
    private const double SoftAtRest = 0.55;

    private static readonly Source KnittingClasses = Source.Published(
        "hand-knitting classes, wraps and yards per pound (one web table), for the yarn at rest; pressed in the cloth it lies between that and weaving yarn");

    // By words in the fibre's short name, most particular first.
    private static readonly ImmutableArray<(string Word, Derived<Number> K)> ByFibre =
    [
        ("woollen", Woollen),
        ("wool", Worsted), ("merino", Worsted), ("alpaca", Worsted), ("mohair", Worsted), ("cashmere", Worsted),
        ("cotton", Smooth), ("linen", Smooth), ("flax", Smooth), ("hemp", Smooth), ("ramie", Smooth), ("silk", Smooth),
        ("viscose", Smooth), ("rayon", Smooth), ("lyocell", Smooth), ("modal", Smooth),
    ];

    /// <summary>K of a yarn with its working.</summary>
    /// <param name="yarn">The yarn.</param>
    public static Derived<Number> Of(Yarn yarn)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        Derived<Number> blend = yarn.Construction == YarnConstruction.Monofilament ? Solid(yarn) : Blend(yarn);
        if (Fullness(yarn) is not { } build) return blend;
        return Derived.From<Number>("Ashenhurst's K", new Rule("K by construction", "K of the fibre × fullness; wraps that you count are surer", Source.CommonPractice), blend, build, (k, full) => k * full);
    }

    /// <summary>Whether the yarn is of a build whose thickness no rule foretells, so that wraps should be counted.</summary>
    /// <param name="construction">How it is made.</param>
    public static bool ShouldBeMeasured(YarnConstruction construction) => construction == YarnConstruction.Soft || Looseness(construction) > 0.1;

    private static Derived<Number>? Fullness(Yarn yarn)
    {
        const string label = "how full the yarn is beside a plied weaving yarn";
        string cause = $"fullness of {yarn.Name}";
        if (yarn.Construction == YarnConstruction.Soft) return Derived.FromRange(label, Number.FromValue(SoftAtRest), Number.FromValue(1), KnittingClasses, cause);
        double looseness = Looseness(yarn.Construction);
        return looseness == 0 ? null : Derived.Given(label, Number.FromValue(1), Source.CommonPractice, looseness, cause);
    }

    // How far the diameter of such a yarn strays from that of a plied spun yarn of the same count.
    private static double Looseness(YarnConstruction construction) => construction switch
    {
        YarnConstruction.Singles => 0.04,
        YarnConstruction.Reeled or YarnConstruction.Filament => 0.06,
        YarnConstruction.Chenille or YarnConstruction.Ribbon => 0.15,
        YarnConstruction.Boucle => 0.2,
        _ => 0,
    };

    private static Derived<Number> Blend(Yarn yarn)
    {
        ImmutableArray<FibreShare> shares = yarn.Fibres.Shares;
        if (shares.IsDefaultOrEmpty) throw new ArgumentException($"The yarn {yarn.Id} names no fibre.", nameof(yarn));
        ImmutableArray<Derived<Number>> parts = [.. shares.Select(s => OfFibre(s.Fibre))];
        if (parts.All(k => ReferenceEquals(k, parts[0]))) return parts[0];
        double[] masses = [.. shares.Select(s => s.MassShare.Value)];
        double whole = masses.Sum();
        return Derived.From<Number>(
            "Ashenhurst's K of the blend",
            new Rule("K of a blend", "1 ÷ √(sum of mass share ÷ K²): volumes add", Source.Derivation),
            parts,
            ks => 1 / Math.Sqrt(ks.Select((k, i) => masses[i] / whole / (k * k)).Sum()));
    }

    private static Derived<Number> OfFibre(Fibre fibre)
    {
        foreach ((string word, Derived<Number> k) in ByFibre)
        {
            if (fibre.Id.Contains(word, StringComparison.OrdinalIgnoreCase)) return k;
        }

        return FromDensity(fibre.BulkDensity);
    }

    private static Derived<Number> Solid(Yarn yarn) => FromDensity(yarn.Fibres.Density);

    private static Derived<Number> FromDensity(Derived<Density> bulk) => Derived.From<Number>(
        "Ashenhurst's K",
        new Rule("K from bulk density", "√(bulk density ÷ 0.979 g/cm³)", Source.Derivation),
        bulk,
        AshenhurstDiameter.KOf);

    private static Derived<Number> Known(string label, double k, double spread) =>
        Derived.Given(label, Number.FromValue(k), Essay, spread);
}
