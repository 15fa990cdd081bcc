using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>What a yarn is made of, by mass. The shares sum to 1.</summary>
/// <param name="Shares">The fibres, largest share first.</param>
public sealed partial record FibreBlend(ImmutableArray<FibreShare> Shares)
{
    private static readonly Rule DensityRule = new("density of a blend", "1 / density = sum of share / density of each fibre", Source.Derivation);

    private static readonly Rule PackingRule = new("packing of a blend", "packing = 1 / sum of (share of the solid volume / packing of each fibre)", Source.Derivation);

    private static readonly Rule RegainRule = new(
        "regain of a blend",
        "regain = sum of share of the dry mass × regain of each fibre",
        Source.Standard("Regulation (EU) No 1007/2011, Article 19(3); ISO 6741, from memory"));

    private static readonly Rule MeanRule = new("mean of a blend by mass", "sum of share × value of each fibre", Source.Derivation);

    private static readonly Rule BulkRule = new("bulk density of a yarn", "density of the fibre × packing", Source.FromMemoryOf("handbooks of yarn geometry"));

    /// <summary>Whether one fibre makes the whole yarn.</summary>
    public bool IsPure => Shares.Length == 1;

    /// <summary>Density of the solid fibres together.</summary>
    public Derived<Density> Density => IsPure
        ? Shares[0].Fibre.Density
        : Derived.From<Density>($"density of {this}", DensityRule, [.. Shares.Select(s => s.Fibre.Density)], v => 1 / v.Select((density, i) => Share(i) / density).Sum());

    /// <summary>Share of a usual spun yarn's volume that is fibre; each fibre keeps the air it is used to.</summary>
    public Derived<Ratio> Packing
    {
        get
        {
            if (IsPure) return Shares[0].Fibre.Packing;
            int n = Shares.Length;
            return Derived.From<Ratio>(
                $"packing of {this}",
                PackingRule,
                [.. Shares.Select(s => (IDerived)s.Fibre.Density), .. Shares.Select(s => s.Fibre.Packing)],
                v =>
                {
                    double solid = 0;
                    double bulk = 0;
                    for (int i = 0; i < n; i++)
                    {
                        solid += Share(i) / v[i];
                        bulk += Share(i) / v[i] / v[n + i];
                    }

                    return solid / bulk;
                });
        }
    }

    /// <summary>Mass per volume of a usual yarn of these fibres, air and all.</summary>
    public Derived<Density> BulkDensity => Derived.From<Density>($"bulk density of yarn of {this}", BulkRule, Density, Packing, (density, packing) => density * packing);

    /// <summary>Customary shrinkage in the first washing, each way: the mean of the fibres by mass.</summary>
    public Derived<Ratio> WashingShrinkage => Mean("washing shrinkage", f => f.WashingShrinkage);

    /// <summary>Stretch at break of the single fibres: the mean by mass.</summary>
    public Derived<Ratio> Elongation => Mean("stretch at break", f => f.Elongation);

    /// <summary>Strength when wet as a share of dry strength: the mean by mass.</summary>
    public Derived<Ratio> WetStrength => Mean("wet strength", f => f.WetStrength);

    /// <summary>The strongest felting of the fibres that make at least a fifth of the yarn.</summary>
    public FeltingClass Felting => Shares.Where(s => s.MassShare.Value >= 0.2).Select(s => s.Fibre.Felting).DefaultIfEmpty(FeltingClass.None).Max();

    /// <summary>A yarn of one fibre.</summary>
    /// <param name="fibre">The fibre.</param>
    public static FibreBlend Pure(Fibre fibre) => new([new FibreShare(fibre, Ratio.FromValue(1))]);

    /// <summary>A blend of parts by mass; the parts are scaled so that they sum to 1.</summary>
    /// <param name="parts">Each fibre with its part, above 0.</param>
    /// <exception cref="ArgumentException">No part, or one that is not above 0.</exception>
    public static FibreBlend Of(params IReadOnlyList<(Fibre Fibre, double Part)> parts)
    {
        if (parts.Count == 0 || parts.Any(p => !double.IsFinite(p.Part) || p.Part <= 0)) throw new ArgumentException("A blend has parts, each above 0.", nameof(parts));
        double sum = parts.Sum(p => p.Part);
        return new FibreBlend(
        [
            .. parts
                .GroupBy(p => p.Fibre.Id, StringComparer.Ordinal)
                .Select(g => new FibreShare(g.First().Fibre, Ratio.FromValue(g.Sum(p => p.Part) / sum)))
                .OrderByDescending(s => s.MassShare.Value),
        ]);
    }

    /// <summary>Moisture regain of the blend; the shares count as shares of the dry mass.</summary>
    /// <param name="basis">The regain agreed in a market, or the real one at 65 % relative humidity.</param>
    public Derived<Ratio> Regain(RegainBasis basis)
    {
        Func<Fibre, Derived<Ratio>> regain = basis switch
        {
            RegainBasis.UnitedStates => f => f.CommercialRegainUnitedStates,
            RegainBasis.Europe => f => f.CommercialRegainEurope,
            RegainBasis.Room => f => f.RoomRegain,
            _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "This is not a basis of regain."),
        };
        return IsPure ? regain(Shares[0].Fibre) : Weighted("regain", RegainRule, regain);
    }

    /// <summary>Whether another blend has the same fibres in the same shares.</summary>
    /// <param name="other">The other blend.</param>
    public bool Equals(FibreBlend? other) => other is not null
        && Shares.Select(s => (s.Fibre.Id, s.MassShare)).SequenceEqual(other.Shares.Select(s => (s.Fibre.Id, s.MassShare)));

    /// <inheritdoc />
    public override int GetHashCode() => Shares.Aggregate(0, (hash, s) => HashCode.Combine(hash, s.Fibre.Id, s.MassShare));

    /// <summary>The blend as a person writes it, for example <c>80 % wool, 20 % silk</c>; <see cref="Parse"/> reads it back.</summary>
    public override string ToString() => IsPure
        ? Shares[0].Fibre.Id
        : string.Join(", ", Shares.Select(s => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{s.MassShare.Percent:0.######} % {s.Fibre.Id}")));

    private Derived<Ratio> Mean(string label, Func<Fibre, Derived<Ratio>> value) => IsPure ? value(Shares[0].Fibre) : Weighted(label, MeanRule, value);

    private Derived<Ratio> Weighted(string label, Rule rule, Func<Fibre, Derived<Ratio>> value) => Derived.From<Ratio>(
        $"{label} of {this}",
        rule,
        [.. Shares.Select(s => value(s.Fibre))],
        v => v.Select((x, i) => Share(i) * x).Sum());

    private double Share(int index) => Shares[index].MassShare.Value;
}
