namespace Clothwright.Core.Colours;

/// <summary>The difference along each axis of CIELAB that a share of people notices between marks of a size.</summary>
/// <remarks>
/// M. Stone, D. Szafir and V. Setlur, "An engineering model for color difference as a function of size", 2014: ND = p (A + B ÷ s), studied
/// for 1/3° to 6°. The smaller a mark, the larger the difference has to be, in blue and yellow most of all.
/// </remarks>
/// <param name="L">Along lightness.</param>
/// <param name="A">From green to red.</param>
/// <param name="B">From blue to yellow.</param>
public readonly record struct NoticedDifference(double L, double A, double B)
{
    /// <summary>The difference that a share of people notices.</summary>
    /// <param name="visualAngleDegrees">Size of the mark in degrees, above 0.</param>
    /// <param name="shareOfPeople">Share of people, 0 to 1; half of them unless said.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not above 0, or the share outside 0 to 1.</exception>
    public static NoticedDifference Of(double visualAngleDegrees, double shareOfPeople = 0.5)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(visualAngleDegrees);
        if (shareOfPeople is not (> 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(shareOfPeople), shareOfPeople, "A share runs from 0 to 1.");
        return new NoticedDifference(
            shareOfPeople * (10.16 + 1.50 / visualAngleDegrees),
            shareOfPeople * (10.68 + 3.08 / visualAngleDegrees),
            shareOfPeople * (10.70 + 5.74 / visualAngleDegrees));
    }

    /// <summary>How many noticed differences lie between two colours: 1 is just told apart.</summary>
    /// <param name="one">A colour.</param>
    /// <param name="other">Another.</param>
    public double Between(CieLab one, CieLab other)
    {
        double l = (one.L - other.L) / L;
        double a = (one.A - other.A) / A;
        double b = (one.B - other.B) / B;
        return Math.Sqrt(l * l + a * a + b * b);
    }
}
