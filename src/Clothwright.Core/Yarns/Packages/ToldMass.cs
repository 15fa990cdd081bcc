using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>The mass of a package as its label tells it.</summary>
/// <remarks>
/// Packages may fall short of what is printed by the tolerable negative error of Directive 76/211/EEC, Annex I
/// (from memory); taken here as two standard deviations.
/// </remarks>
internal static class ToldMass
{
    private static readonly Source Directive = Source.FromMemoryOf("Directive 76/211/EEC, Annex I, tolerable negative error");

    /// <summary>The mass with the spread of packages as sold.</summary>
    public static Derived<Mass> Of(Mass told, string yarn) => Derived.Given(
        "as told, not weighed", told, Directive, TolerableErrorGrams(told.Grams) / 2 / 1000, $"how true packages of {yarn} are to {told.Grams:0.###} g", "as printed or told, at the agreed regain");

    private static double TolerableErrorGrams(double grams) => grams switch
    {
        <= 50 => grams * 0.09,
        <= 100 => 4.5,
        <= 200 => grams * 0.045,
        <= 300 => 9,
        <= 500 => grams * 0.03,
        <= 1000 => 15,
        _ => grams * 0.015,
    };
}
