using System.Collections.Immutable;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Cloths.Hand;

/// <summary>Fineness and modulus of fibres, from memory of Morton &amp; Hearle; good enough to rank cloths, not to promise values.</summary>
/// <param name="Tex">Mass per length of one fibre.</param>
/// <param name="ModulusNewtonPerTex">Initial modulus.</param>
/// <param name="ShapeFactor">How stiff its section is beside a circle.</param>
internal readonly record struct FibreStiffness(double Tex, double ModulusNewtonPerTex, double ShapeFactor)
{
    // By words in the fibre's short name, most particular first.
    private static readonly ImmutableArray<(string Word, FibreStiffness Value)> ByFibre =
    [
        ("merino", new(0.41, 2.3, 0.8)), ("cashmere", new(0.27, 2.3, 0.8)), ("alpaca", new(0.65, 2.5, 0.8)), ("mohair", new(1.0, 3.0, 0.8)),
        ("wool", new(0.65, 2.3, 0.8)), ("silk", new(0.13, 7.3, 0.6)), ("cotton", new(0.17, 5.0, 0.7)),
        ("linen", new(0.30, 18.0, 0.9)), ("hemp", new(0.35, 20.0, 0.9)), ("ramie", new(0.50, 15.0, 0.9)),
        ("viscose", new(0.17, 5.5, 0.75)), ("modal", new(0.13, 6.0, 0.75)), ("lyocell", new(0.14, 9.0, 0.9)),
        ("acetate", new(0.30, 3.6, 0.7)), ("nylon", new(0.33, 2.6, 0.9)), ("polyamide", new(0.33, 2.6, 0.9)),
        ("polyester", new(0.17, 8.0, 0.9)), ("acrylic", new(0.33, 6.0, 0.8)),
    ];

    internal static FibreStiffness? Of(Fibre fibre)
    {
        foreach ((string word, FibreStiffness value) in ByFibre)
        {
            if (fibre.Id.Contains(word, StringComparison.OrdinalIgnoreCase)) return value;
        }

        return null;
    }
}
