using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Reckons how much yarn is left on packages by weighing them.</summary>
public static class StockReckoning
{
    // A kitchen scale shows whole grams: ±0.5 g, evenly.
    private static readonly double ScaleDeviationKilograms = 0.001 / Math.Sqrt(12);

    private static readonly Rule NetRule = new("net mass", "net = scale − empty support", Source.Definition);

    private static readonly Rule LengthRule = new("length left by weighing", "metres = 1000 × grams at the agreed regain / tex", Source.Definition);

    private static readonly Rule ShelfRule = new("yarn on the shelf", "sum of what is left on each package", Source.Definition);

    /// <summary>What is left on one package.</summary>
    /// <param name="yarn">The yarn on it.</param>
    /// <param name="package">The package as weighed.</param>
    /// <param name="basis">The market whose agreed regain the count is sold at.</param>
    /// <exception cref="InputProblemException">The support weighs more than the whole package, or the humidity cannot be.</exception>
    public static StockLeft Left(Yarn yarn, YarnPackage package, RegainBasis basis = RegainBasis.UnitedStates) =>
        Left(yarn, package, Moisture.RegainInRoom(yarn.Fibres, package.RelativeHumidity), basis);

    /// <summary>What is left on one package whose actual regain is known, for example from drying a sample.</summary>
    /// <param name="yarn">The yarn on it.</param>
    /// <param name="package">The package as weighed.</param>
    /// <param name="actualRegain">Regain of the yarn when it was weighed.</param>
    /// <param name="basis">The market whose agreed regain the count is sold at.</param>
    /// <exception cref="InputProblemException">The support weighs more than the whole package.</exception>
    public static StockLeft Left(Yarn yarn, YarnPackage package, Derived<Ratio> actualRegain, RegainBasis basis = RegainBasis.UnitedStates)
    {
        if (package.Tare > package.GrossMass)
        {
            throw new InputProblemException(new InputProblem(
                $"The empty support weighs {package.Tare}, more than the whole package of {yarn.Name} with {package.GrossMass}.",
                "packages.tare",
                "Weigh the empty support again, or give the mass of package and support together."));
        }

        if (package.Basis == MassBasis.Told) return AsTold(yarn, package);
        Derived<Mass> gross = Derived.Given("on the scale", package.GrossMass, Source.Measured, ScaleDeviationKilograms, $"scale, {yarn.Id}, {package.GrossMass.Grams:0.###} g");
        Derived<Mass> tare = package.Tare == Mass.Zero ? Derived.Decision("empty support", Mass.Zero)
            : package.Basis == MassBasis.UsualSupport ? UsualSupport.Of(package.Form, package.GrossMass)
            : Derived.Given("empty support", package.Tare, Source.Measured, ScaleDeviationKilograms, $"scale, support of {yarn.Id}, {package.Tare.Grams:0.###} g");
        Derived<Mass> net = Derived.From<Mass>("net mass", NetRule, gross, tare, (g, t) => Math.Max(0, g - t));
        Derived<Mass> agreed = Moisture.AgreedMass(net, actualRegain, yarn.Fibres.Regain(basis));
        return new StockLeft(package, net, agreed, LengthOf(yarn, agreed));
    }

    // A label tells the mass at the agreed regain, for which the count holds: the room does not come in.
    private static StockLeft AsTold(Yarn yarn, YarnPackage package)
    {
        Derived<Mass> told = ToldMass.Of(package.GrossMass - package.Tare, yarn.Id);
        return new StockLeft(package, told, told, LengthOf(yarn, told));
    }

    private static Derived<Length> LengthOf(Yarn yarn, Derived<Mass> agreed) =>
        Derived.From<Length>($"{yarn.Name} left", LengthRule, agreed, yarn.LinearDensity, (kilograms, tex) => kilograms * 1e6 / tex);

    /// <summary>What is left on every package of a yarn.</summary>
    /// <param name="yarn">The yarn with its packages.</param>
    /// <param name="basis">The market whose agreed regain the count is sold at.</param>
    /// <exception cref="InputProblemException">A package was weighed or described in a way that cannot be.</exception>
    public static ImmutableArray<StockLeft> OnShelf(Yarn yarn, RegainBasis basis = RegainBasis.UnitedStates) =>
        [.. yarn.Packages.Select(p => Left(yarn, p, basis))];

    /// <summary>Length of a yarn on the shelf, all packages together.</summary>
    /// <param name="yarn">The yarn with its packages.</param>
    /// <param name="basis">The market whose agreed regain the count is sold at.</param>
    /// <exception cref="InputProblemException">A package was weighed or described in a way that cannot be.</exception>
    public static Derived<Length> LengthOnShelf(Yarn yarn, RegainBasis basis = RegainBasis.UnitedStates) =>
        Derived.Sum($"{yarn.Name} on the shelf", ShelfRule, [.. OnShelf(yarn, basis).Select(s => s.Length)]);
}
