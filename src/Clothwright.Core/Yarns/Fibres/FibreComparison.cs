using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Says in what yarns of equal count but unlike fibre differ, and by how much.</summary>
public static class FibreComparison
{
    private static readonly Rule DiameterRule = new(
        "yarn diameter from bulk density",
        "d = √(4 × tex / (1000 × π × density × packing)) mm, tex in g/km, density in g/cm³",
        Source.Derivation);

    /// <summary>Differences of each fibre against the first.</summary>
    /// <param name="size">Mass per length that all the yarns have.</param>
    /// <param name="fibres">Two fibres or more; the first is what the others are compared with.</param>
    /// <returns>For each other fibre one difference for each topic.</returns>
    /// <exception cref="ArgumentException">Fewer than two fibres.</exception>
    public static ImmutableArray<FibreDifference> OfEqualCount(Derived<LinearDensity> size, params IReadOnlyList<Fibre> fibres)
    {
        if (fibres.Count < 2) throw new ArgumentException("A comparison needs two fibres or more.", nameof(fibres));
        return [.. fibres.Skip(1).SelectMany(f => Pair(size, f, fibres[0]))];
    }

    /// <summary>Diameter of a usual spun yarn.</summary>
    /// <param name="size">Mass per length.</param>
    /// <param name="fibre">The fibre.</param>
    public static Derived<Length> Diameter(Derived<LinearDensity> size, Fibre fibre) => Derived.From<Length>(
        $"diameter of yarn of {fibre.Name}",
        DiameterRule,
        size,
        fibre.BulkDensity,
        (tex, density) => Math.Sqrt(4 * tex / (1000 * Math.PI * density)) / 1000);

    private static IEnumerable<FibreDifference> Pair(Derived<LinearDensity> size, Fibre fibre, Fibre against)
    {
        yield return OfDiameter(size, fibre, against);
        yield return OfShare(FibreTopic.Stretch, fibre, against, f => f.Elongation, "stretches", "before it breaks", "it forgives uneven tension", "its tension has to be more even");
        yield return OfShare(FibreTopic.WashingShrinkage, fibre, against, f => f.WashingShrinkage, "shrinks", "in the first washing, each way", "allow more width and length on the loom", "allow less width and length on the loom");
        yield return OfShare(FibreTopic.WetStrength, fibre, against, f => f.WetStrength, "keeps", "of its strength when wet", "wet finishing strains it less", "handle it more gently when wet");
        yield return OfShare(FibreTopic.Regain, fibre, against, f => f.RoomRegain, "holds", "of water in air of 65 % humidity", "weighing it needs more care for the room", "weighing it needs less care for the room");
        yield return OfFelting(fibre, against);
    }

    private static FibreDifference OfDiameter(Derived<LinearDensity> size, Fibre fibre, Fibre against)
    {
        Derived<Length> one = Diameter(size, fibre);
        Derived<Length> other = Diameter(size, against);
        // The size is the same yarn count in both, so only density and packing part them.
        Derived<Ratio> ratio = Derived.From<Ratio>("ratio of the diameters", DiameterRule, one, other, (a, b) => a / b);
        double percent = (ratio.Value.Value - 1) * 100;
        bool matters = Math.Abs(percent) > ratio.StandardDeviation * 100;
        string compare = $"At {Text(size.Value.Tex, "0.#")} tex, by density and packing, {fibre.Name} is {Text(one.Value.Millimetres, "0.000")} mm thick against {Text(other.Value.Millimetres, "0.000")} mm for {against.Name}";
        string meaning = matters
            ? percent < 0
                ? $": {Text(-percent, "0.#")} % thinner, so the same cover takes about {Text(-percent / (100 + percent) * 100, "0")} % more ends."
                : $": {Text(percent, "0.#")} % thicker, so the same cover takes about {Text(percent / (100 + percent) * 100, "0")} % fewer ends."
            : $": {Text(Math.Abs(percent), "0.#")} % {(percent < 0 ? "thinner" : "thicker")}, less than how far such yarns differ among themselves (± {Text(ratio.StandardDeviation * 100, "0.#")} %).";
        return new FibreDifference(FibreTopic.Diameter, fibre, against, one, other, matters, compare + meaning);
    }

    private static FibreDifference OfShare(
        FibreTopic topic, Fibre fibre, Fibre against, Func<Fibre, Derived<Ratio>> value, string verb, string rest, string ifMore, string ifLess)
    {
        Derived<Ratio> one = value(fibre);
        Derived<Ratio> other = value(against);
        double points = one.Value.Percent - other.Value.Percent;
        double spread = Math.Sqrt(one.StandardDeviation * one.StandardDeviation + other.StandardDeviation * other.StandardDeviation) * 100;
        bool matters = Math.Abs(points) > spread && Math.Abs(points) > 0.05;
        string figures = $"{Capital(fibre.Name)} {verb} {Text(one.Value.Percent, "0.#")} % {rest}, {against.Name} {Text(other.Value.Percent, "0.#")} %";
        string meaning = matters ? $": {(points > 0 ? ifMore : ifLess)}." : ": no difference beyond what either shows by itself.";
        return new FibreDifference(topic, fibre, against, one, other, matters, figures + meaning);
    }

    private static FibreDifference OfFelting(Fibre fibre, Fibre against)
    {
        bool matters = fibre.Felting != against.Felting;
        return new FibreDifference(
            FibreTopic.Felting,
            fibre,
            against,
            Class(fibre),
            Class(against),
            matters,
            matters ? $"{Capital(fibre.Name)} {Felts(fibre.Felting)}, {against.Name} {Felts(against.Felting)}." : $"{Capital(fibre.Name)} and {against.Name} alike: each {Felts(fibre.Felting)}.");
    }

    private static Derived<Whole> Class(Fibre fibre) =>
        Derived.Given($"felting class of {fibre.Name}, 0 none to 4 strong", Whole.FromCount((int)fibre.Felting), Source.CommonPractice);

    private static string Felts(FeltingClass felting) => felting switch
    {
        FeltingClass.None => "does not felt",
        FeltingClass.Resisted => "hardly felts",
        FeltingClass.Slight => "felts a little",
        FeltingClass.Moderate => "felts with patience",
        _ => "felts quickly",
    };

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
