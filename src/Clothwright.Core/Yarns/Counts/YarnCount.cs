using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>A yarn's thickness as the trade numbers it: a system, a number and how many strands are folded together.</summary>
/// <remarks>Numbers of the trade are nominal: yarns as sold stray from them, see <see cref="ToLinearDensity"/>.</remarks>
public sealed partial record YarnCount
{
    private const int MostPlies = 999;

    private YarnCount(CountSystem system, double number, int plies, CountBasis basis, double? statedResultant)
    {
        System = system;
        Number = number;
        Plies = plies;
        Basis = basis;
        StatedResultant = statedResultant;
    }

    /// <summary>The count system.</summary>
    public CountSystem System { get; }

    /// <summary>The number as written: of one strand or of the finished yarn, see <see cref="Basis"/>. Above 0.</summary>
    public double Number { get; }

    /// <summary>Strands folded together; 1 for a single yarn.</summary>
    public int Plies { get; }

    /// <summary>What <see cref="Number"/> is the number of.</summary>
    public CountBasis Basis { get; }

    /// <summary>Number of the finished yarn where it was written beside that of the strand, as in <c>34 tex x 2; R 69.3 tex</c>.</summary>
    public double? StatedResultant { get; }

    /// <summary>What a reader should know of how the text was understood; null when there was no choice.</summary>
    public string? Remark { get; private init; }

    /// <summary>Nominal tex of the finished yarn.</summary>
    public double Tex => StatedResultant is { } stated ? Definition.TexOf(stated)
        : Basis == CountBasis.Resultant ? Definition.TexOf(Number)
        : Definition.TexOf(Number) * Plies;

    /// <summary>Nominal tex of one strand.</summary>
    public double SinglesTex => Basis == CountBasis.Resultant ? Definition.TexOf(Number) / Plies : Definition.TexOf(Number);

    /// <summary>Number of the finished yarn in its own system, for example 4 for 8/2 cotton.</summary>
    public double ResultantNumber => ResultantIn(System);

    /// <summary>Number of one strand in its own system, for example 120 for English spun silk 60/2.</summary>
    public double SinglesNumber => Definition.NumberOf(Quantities.LinearDensity.FromTex(SinglesTex));

    /// <summary>Length that the strands lose in folding, as a share; null unless both single and finished yarn were written.</summary>
    public Ratio? StatedTakeUp => StatedResultant is null ? null : Ratio.FromValue(1 - SinglesTex * Plies / Tex);

    private CountSystemDefinition Definition => System.Definition();

    /// <summary>A count made of its parts.</summary>
    /// <param name="system">The count system.</param>
    /// <param name="number">The number; above 0 and finite.</param>
    /// <param name="plies">Strands, 1 to 999.</param>
    /// <param name="basis">What the number is of; left out, the custom of the system.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number or the strands are out of range.</exception>
    public static YarnCount Of(CountSystem system, double number, int plies = 1, CountBasis? basis = null)
    {
        CountSystemDefinition definition = system.Definition();
        ArgumentOutOfRangeException.ThrowIfLessThan(plies, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(plies, MostPlies);
        _ = Quantities.LinearDensity.FromTex(definition.TexOf(number));
        return new YarnCount(system, number, plies, basis ?? CustomaryBasis(definition), null);
    }

    /// <summary>Number of the finished yarn in another system.</summary>
    /// <param name="system">The other system.</param>
    public double ResultantIn(CountSystem system) => system.Definition().NumberOf(Quantities.LinearDensity.FromTex(Tex));

    /// <summary>Mass per length of the finished yarn, with the formula and source of its system.</summary>
    /// <param name="takeUp">Share of their length that the strands lose in folding, where known; left out, as the trade does.</param>
    /// <returns>The nominal value with the spread that yarns as sold show about their count.</returns>
    public Derived<LinearDensity> ToLinearDensity(Derived<Ratio>? takeUp = null)
    {
        CountSystemDefinition definition = Definition;
        double written = StatedResultant ?? Number;
        bool folds = Plies > 1 && Basis == CountBasis.Singles && StatedResultant is null;
        var inputs = ImmutableArray.CreateBuilder<IDerived>();
        inputs.Add(Derived.Given($"count, {definition.Sign}", Quantities.Number.FromValue(written), Source.Decision, formula: Remark ?? "as written"));
        inputs.Add(CountTolerance.Of(this));
        if (folds) inputs.Add(Derived.Decision("strands", Whole.FromCount(Plies)));
        if (folds && takeUp is not null) inputs.Add(takeUp);

        string formula = definition.Formula
            + (folds ? " × strands" : "")
            + (folds && takeUp is not null ? " / (1 − take-up in folding)" : "")
            + " × true to count";
        return Derived.From<LinearDensity>(
            $"mass per length of {this}",
            new Rule(definition.Title, formula, definition.Source),
            inputs.ToImmutable(),
            v => definition.TexOf(v[0]) * v[1] * (folds ? v[2] : 1) / (v.Length > 3 ? 1 - v[3] : 1));
    }

    /// <summary>The count as it is written in its system, without the system's name, for example <c>8/2</c>, <c>16/1</c> or <c>R 60 tex/2</c>.</summary>
    public string Label
    {
        get
        {
            string number = Digits(Number);
            if (StatedResultant is { } stated) return $"{number} {Definition.Sign} x {Plies}; R {Digits(stated)} {Definition.Sign}";
            if (Definition.PlyOrder == PlyOrder.None || (Definition.PlyOrder == PlyOrder.Stated && Plies == 1)) return $"{number} {Definition.Sign}";
            if (Basis == CountBasis.Resultant && Definition.PlyOrder != PlyOrder.Resultant) return $"R {number} {Definition.Sign}/{Plies}";
            if (Plies == 1) return Definition.PlyOrder == PlyOrder.PlyFirst ? number : $"{number}/1";
            string customary = Definition.PlyOrder == PlyOrder.PlyFirst ? $"{Plies}/{number}" : $"{number}/{Plies}";
            bool plain = Definition.PlyOrder != PlyOrder.Stated
                && CustomaryBasis(Definition) == Basis
                && CountText.Order(Definition, Definition.PlyOrder == PlyOrder.PlyFirst ? Plies : Number, Definition.PlyOrder == PlyOrder.PlyFirst ? Number : Plies)
                    is { } order && order.Number == Number && order.Plies == Plies;
            return plain ? customary : $"{number} {Definition.Sign} x {Plies}";
        }
    }

    /// <summary>The count with its system, for example <c>8/2 cotton</c>; <see cref="Parse"/> reads it back.</summary>
    public override string ToString() => Label.Contains(Definition.Sign, StringComparison.Ordinal) ? Label : $"{Label} {Definition.Name}";

    private static CountBasis CustomaryBasis(CountSystemDefinition definition) =>
        definition.PlyOrder is PlyOrder.Resultant or PlyOrder.None ? CountBasis.Resultant : CountBasis.Singles;

    // Shortest digits that read back as the same number; never with an exponent, which no label carries.
    private static string Digits(double number)
    {
        string shortest = number.ToString("R", CultureInfo.InvariantCulture);
        return shortest.Contains('E', StringComparison.Ordinal) ? number.ToString("0.####################", CultureInfo.InvariantCulture) : shortest;
    }
}
