using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Diameters;

/// <summary>The diameter of a yarn by one rule.</summary>
/// <param name="Rule">The rule by its trade name.</param>
/// <param name="Diameter">The diameter, as of a round thread.</param>
public sealed record DiameterReading(string Rule, Derived<Length> Diameter)
{
    /// <summary>Diameters that fit side by side: geometric wraps per width.</summary>
    public Derived<Sett> Wraps => Derived.From<Sett>(
        "threads touching",
        new Rule("threads side by side", "1 ÷ diameter", Source.Derivation),
        Diameter,
        d => 1 / d);
}
