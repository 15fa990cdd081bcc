namespace Clothwright.Core.Colours;

/// <summary>Contrast of two colours as WCAG 2.2 defines it: (lighter luminance + 0.05) / (darker + 0.05), 1 to 21.</summary>
public static class ContrastRatio
{
    /// <summary>The contrast of two colours, in either order.</summary>
    public static double Of(SrgbColour one, SrgbColour other)
    {
        double first = CieXyz.From(LinearColour.From(one)).Y;
        double second = CieXyz.From(LinearColour.From(other)).Y;
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }
}
