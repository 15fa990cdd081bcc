using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Setts;

/// <summary>Yarns and weaves for the tests of setts and cloths.</summary>
internal static class SampleYarns
{
    public static Drawdown Plain { get; } = Weave("10/01");

    public static Drawdown Twill { get; } = Weave("1100/0110/0011/1001");

    public static Drawdown Hopsack { get; } = Weave("1100/1100/0011/0011");

    public static Drawdown WarpRib { get; } = Weave("10/10/01/01");

    public static Drawdown WeftRib { get; } = Weave("1100/0011");

    public static Drawdown Satin5 { get; } = Weave("10000/00100/00001/01000/00010");

    public static Drawdown Weave(string rows) => Drawdown.Parse(rows).Value;

    public static Yarn Of(string fibre = "cotton", double tex = 147.6, YarnConstruction construction = YarnConstruction.Spun, string? id = null) => new(
        id ?? $"{fibre}-{tex}",
        $"{fibre}, {tex:0.#} tex",
        Derived.Decision("mass per length", LinearDensity.FromTex(tex)),
        FibreBlend.Pure(FibreCatalogue.Get(fibre)),
        construction,
        new SrgbColour(0x3b, 0x7a, 0x78));
}
