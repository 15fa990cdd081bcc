using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>What the numbers of one count system mean.</summary>
/// <param name="System">The system.</param>
/// <param name="Name">Name as typed, for example <c>woollen-run</c>.</param>
/// <param name="Aliases">Other spellings, lower case.</param>
/// <param name="Title">Name for people with the definition, for example <c>woollen run, runs of 1600 yards in a pound</c>.</param>
/// <param name="Sign">Sign printed beside the number, for example <c>NeC</c>.</param>
/// <param name="IsDirect">True when the number is a mass per length (bigger is thicker), false when it is a length per mass (bigger is finer).</param>
/// <param name="UnitLength">The length of the definition.</param>
/// <param name="UnitMass">The mass of the definition.</param>
/// <param name="PlyOrder">How plied yarns are written.</param>
/// <param name="UsualNumbers">Numbers usually met; null where the system is never offered unasked.</param>
/// <param name="Source">Where the definition comes from.</param>
public sealed record CountSystemDefinition(
    CountSystem System,
    string Name,
    ImmutableArray<string> Aliases,
    string Title,
    string Sign,
    bool IsDirect,
    Length UnitLength,
    Mass UnitMass,
    PlyOrder PlyOrder,
    (double Low, double High)? UsualNumbers,
    Source Source)
{
    /// <summary>Tex of a yarn numbered 1, from the definition's mass and length.</summary>
    public double TexOfOne { get; } = UnitMass.Grams * 1000 / UnitLength.Metres;

    /// <summary>The conversion as a weaver can follow it, for example <c>tex = 590.5412 / count</c>.</summary>
    public string Formula => IsDirect
        ? TexOfOne == 1 ? "tex = count" : $"tex = {FactorText} × count"
        : $"tex = {FactorText} / count";

    internal string FactorText => TexOfOne.ToString("0.#######", CultureInfo.InvariantCulture);

    /// <summary>Tex of a yarn with a number in this system.</summary>
    /// <param name="number">The number; above 0 and finite.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is not above 0 and finite.</exception>
    public double TexOf(double number) => double.IsFinite(number) && number > 0
        ? IsDirect ? TexOfOne * number : TexOfOne / number
        : throw new ArgumentOutOfRangeException(nameof(number), number, "A count is a finite number above 0.");

    /// <summary>Number of a yarn in this system.</summary>
    /// <param name="linearDensity">Mass per length of the yarn.</param>
    public double NumberOf(LinearDensity linearDensity) => IsDirect ? linearDensity.Tex / TexOfOne : TexOfOne / linearDensity.Tex;
}
