using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Hand;

/// <summary>How a cloth feels and falls, in words, with what the words rest on.</summary>
/// <param name="Words">Short judgement, for example <c>falls softly; light</c>.</param>
/// <param name="Reasons">Sentences that give tightness, floats and mass behind it.</param>
/// <param name="BendingLength">Length of cloth that bends under its own weight, a lower bound that only ranks cloths; null where fibre stiffness is unknown.</param>
public sealed record ClothHand(string Words, ImmutableArray<string> Reasons, Derived<Length>? BendingLength)
{
    internal static ClothHand Of(ClothGeometry cloth)
    {
        double tightness = cloth.Tightness.Value.Value;
        double grams = cloth.Mass.Value.GramsPerSquareMetre;
        string fall = tightness switch
        {
            > 1 => "closer than these yarns can lie",
            > 0.9 => "stiff, near its limit",
            > 0.75 => "firm",
            > 0.6 => "supple",
            > 0.45 => "falls softly",
            _ => "open, threads may shift",
        };
        string weight = grams switch { < 120 => "light", < 250 => "of middling weight", < 400 => "heavy", _ => "very heavy" };
        (Length warpFloat, Length weftFloat) = FloatLengths.Longest(cloth);
        Length longest = warpFloat > weftFloat ? warpFloat : weftFloat;
        var reasons = ImmutableArray.CreateBuilder<string>();
        reasons.Add($"Tightness {cloth.Tightness.Working.Format()} of the jam; under about half a cloth falls softly, over nine tenths it is a board.");
        reasons.Add($"Changes of face at each crossing: {cloth.CrossingOverFirmness.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)}, where plain weave has 2 and a 2/2 twill 1; fewer is softer.");
        reasons.Add($"The longest float is {longest}.");
        if (longest > FloatLengths.Catching) reasons.Add("Floats as long as this catch on rings, buttons and small fingers; shorten them or choose another use.");
        reasons.Add($"Mass {cloth.Mass.Working.Format()}.");
        return new ClothHand($"{fall}; {weight}", reasons.ToImmutable(), BendingBound.Of(cloth));
    }
}
