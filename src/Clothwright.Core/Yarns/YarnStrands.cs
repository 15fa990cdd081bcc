using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Several strands of a yarn side by side in one pick, taken as one thread.</summary>
public static class YarnStrands
{
    private static readonly Rule MassRule = new("strands in one pick", "mass per length = strands × mass per length of one", Source.Derivation);

    private static readonly Rule WrapsRule = new("wraps of several strands", "wraps = wraps of one strand ÷ √strands: their areas add", Source.Derivation);

    /// <summary>The strands as one thread of their mass and area.</summary>
    /// <param name="yarn">One strand.</param>
    /// <param name="strands">How many, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no strand.</exception>
    public static Yarn SideBySide(Yarn yarn, int strands)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        ArgumentOutOfRangeException.ThrowIfLessThan(strands, 1);
        if (strands == 1) return yarn;
        string count = strands.ToString(CultureInfo.InvariantCulture);
        Derived<Whole> number = Derived.Decision("strands", Whole.FromCount(strands));
        return yarn with
        {
            Name = $"{yarn.Name}, {count} strands",
            LinearDensity = Derived.From<LinearDensity>($"mass per length of {count} strands", MassRule, yarn.LinearDensity, number, (tex, n) => tex * n),
            MeasuredWraps = yarn.MeasuredWraps is { } wraps
                ? Derived.From<Sett>($"wraps of {count} strands", WrapsRule, wraps, number, (w, n) => w / Math.Sqrt(n))
                : null,
        };
    }
}
