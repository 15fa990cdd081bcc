using Clothwright.Core.Quantities;

namespace Clothwright.Core.Setts.Reeds;

/// <summary>The reed that gives a wanted sett in the woven cloth once the weft has drawn it in.</summary>
public static class GreyReed
{
    /// <summary>Sett in the reed: sett in the cloth ÷ (1 + weft crimp).</summary>
    /// <param name="inCloth">Ends per width of the woven cloth.</param>
    /// <param name="weftCrimp">Crimp of the weft, on cloth width.</param>
    public static Sett SettInReed(Sett inCloth, Ratio weftCrimp) => inCloth * (1 / (1 + weftCrimp.Value));

    /// <summary>Dents per width.</summary>
    /// <param name="inCloth">Ends per width of the woven cloth.</param>
    /// <param name="weftCrimp">Crimp of the weft, on cloth width.</param>
    /// <param name="sley">Ends in each dent.</param>
    public static Sett Dents(Sett inCloth, Ratio weftCrimp, Sley sley)
    {
        ArgumentNullException.ThrowIfNull(sley);
        return SettInReed(inCloth, weftCrimp) * (1 / sley.MeanEndsPerDent);
    }
}
