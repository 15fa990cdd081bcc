using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>What an empty support usually weighs, for a package whose support was never weighed.</summary>
/// <remarks>Common practice, no source: paper cones and tubes differ from mill to mill. Weighing one empty support is better.</remarks>
public static class UsualSupport
{
    // Above this a package is of the large kind that mills sell, on a heavier support.
    private const double LargePackageGrams = 600;

    /// <summary>The mass of an empty support, as a range.</summary>
    /// <param name="form">How the yarn is put up.</param>
    /// <param name="gross">What the whole package weighs.</param>
    public static Derived<Mass> Of(PackageForm form, Mass gross)
    {
        bool large = gross.Grams > LargePackageGrams;
        return form switch
        {
            PackageForm.Cone => large ? Between(40, 80, "paper cone of a large package") : Between(15, 45, "paper cone"),
            PackageForm.Tube => large ? Between(30, 60, "paper tube of a large package") : Between(10, 30, "paper tube"),
            PackageForm.Ball or PackageForm.Skein => Derived.Decision("empty support, none", Mass.Zero),
            _ => throw new ArgumentOutOfRangeException(nameof(form), form, "This is not a way to put yarn up."),
        };
    }

    private static Derived<Mass> Between(double low, double high, string support) =>
        Derived.FromRange($"empty {support}, not weighed", Mass.FromGrams(low), Mass.FromGrams(high), Source.CommonPractice, $"mass of an empty {support}");
}
