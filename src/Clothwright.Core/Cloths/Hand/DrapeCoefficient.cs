namespace Clothwright.Core.Cloths.Hand;

/// <summary>Drape coefficient of a round sample hung over a disc: how much of the free ring still casts a shadow. High is stiff.</summary>
/// <remarks>Cusick 1968, from memory; by mass of the paper shadow read in GATE Textile 2022. Measured only: it does not follow from draft and yarn.</remarks>
public static class DrapeCoefficient
{
    /// <summary>From the area of the shadow, all in one unit.</summary>
    /// <param name="shadow">Area of the shadow with the disc.</param>
    /// <param name="disc">Radius of the disc.</param>
    /// <param name="sample">Radius of the sample.</param>
    public static double FromArea(double shadow, double disc, double sample)
    {
        double inner = Math.PI * disc * disc;
        return (shadow - inner) / (Math.PI * sample * sample - inner);
    }

    /// <summary>Mass of the shadow cut from a paper ring.</summary>
    /// <param name="coefficient">Drape coefficient, 0 to 1.</param>
    /// <param name="ring">Mass of the whole paper ring.</param>
    public static double ShadowMass(double coefficient, double ring) => coefficient * ring;
}
