using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>What the water in yarn does to its weight. Regain is water per dry mass, content is water per total mass.</summary>
public static class Moisture
{
    // A heated winter room near 35 % r.h. holds roughly 60 % of what fibres hold at 65 %; a straight line between and beyond.
    private const double ReferenceHumidity = 0.65;
    private const double DryRoomHumidity = 0.35;
    private const double DryRoomShare = 0.6;
    private const double ShareDeviation = 0.07;

    private static readonly Source Trade = Source.Published("textilecalculations.com, invoice weight; ASTM D2494 and ISO 6741, from memory");

    private static readonly Rule AgreedRule = new(
        "mass at the agreed regain",
        "mass = weighed × (100 + agreed regain) / (100 + actual regain)",
        Trade);

    private static readonly Rule HumidityRule = new(
        "regain in the room",
        "regain = regain at 65 % r.h. × (0.6 + 0.4 × (humidity − 35 %) / 30 %)",
        Source.FromMemoryOf("sorption curves of fibres: near 35 % r.h. roughly 60 % of the regain at 65 %"));

    /// <summary>Content of a yarn with a regain: R / (1 + R).</summary>
    /// <param name="regain">Water per dry mass, 0 or more.</param>
    public static Ratio ContentFromRegain(Ratio regain) => Ratio.FromValue(regain.Value / (1 + regain.Value));

    /// <summary>Regain of a yarn with a content: C / (1 − C).</summary>
    /// <param name="content">Water per total mass, from 0 to below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The content is not from 0 to below 1.</exception>
    public static Ratio RegainFromContent(Ratio content) => content.Value is >= 0 and < 1
        ? Ratio.FromValue(content.Value / (1 - content.Value))
        : throw new ArgumentOutOfRangeException(nameof(content), content.Value, "A moisture content is from 0 to below 1.");

    /// <summary>Regain by drying: what was lost, per dry mass.</summary>
    /// <param name="weighed">Mass before drying.</param>
    /// <param name="dry">Mass bone-dry; above 0 and not above <paramref name="weighed"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The dry mass is 0 or above the mass before.</exception>
    public static Ratio RegainByDrying(Mass weighed, Mass dry) => dry.Grams > 0 && dry <= weighed
        ? Ratio.FromValue(weighed / dry - 1)
        : throw new ArgumentOutOfRangeException(nameof(dry), dry.Grams, "A dry mass is above 0 and not above the mass before drying.");

    /// <summary>What a yarn would weigh at the regain that the trade agreed on.</summary>
    /// <param name="weighed">Net mass on the scale.</param>
    /// <param name="actual">Regain it had there.</param>
    /// <param name="agreed">Agreed regain.</param>
    public static Derived<Mass> AgreedMass(Derived<Mass> weighed, Derived<Ratio> actual, Derived<Ratio> agreed) =>
        Derived.From<Mass>("mass at the agreed regain", AgreedRule, weighed, agreed, actual, (mass, rc, ra) => mass * (1 + rc) / (1 + ra));

    /// <summary>Regain that fibres take up in a room.</summary>
    /// <param name="fibres">The fibres.</param>
    /// <param name="relativeHumidity">Relative humidity of the room from 0 to 1; null if unknown: 65 % is then taken, with a wider spread.</param>
    /// <exception cref="InputProblemException">The humidity is not from 0 to 100 %.</exception>
    public static Derived<Ratio> RegainInRoom(FibreBlend fibres, Ratio? relativeHumidity)
    {
        if (relativeHumidity is { Value: < 0 or > 1 } outside)
        {
            throw new InputProblemException(new InputProblem(
                $"A relative humidity of {outside.Percent:0.#} % cannot be.",
                "relativeHumidity",
                "Give the relative humidity of the room, from 0 to 100 %, for example 45 %."));
        }

        Derived<Ratio> humidity = relativeHumidity is { } measured
            ? Derived.Given("relative humidity of the room", measured, Source.Measured, 0.03)
            : Derived.Given("relative humidity of the room, not measured", Ratio.FromValue(ReferenceHumidity), Source.CommonPractice, 0.1);
        Derived<Ratio> curve = Derived.Given("how well the curve holds", Ratio.FromValue(1), HumidityRule.Source, ShareDeviation);
        return Derived.From<Ratio>(
            "regain in the room",
            HumidityRule,
            fibres.Regain(RegainBasis.Room),
            humidity,
            curve,
            (regain, rh, fit) => regain * Math.Max(0, DryRoomShare + (1 - DryRoomShare) * (rh - DryRoomHumidity) / (ReferenceHumidity - DryRoomHumidity)) * fit);
    }
}
