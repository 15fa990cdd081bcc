using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Hours;

/// <summary>How fast handweavers usually work. Hands differ by a factor of two, so the ranges are wide; the weaver's own rates override them.</summary>
internal static class CustomaryRates
{
    public static Derived<Number> WarpMetresPerHour { get; } = Range("warp wound, metres an hour", 400, 1000);

    public static Derived<Number> EndsThreadedPerHour { get; } = Range("ends threaded, an hour", 100, 300);

    public static Derived<Number> EndsSleyedPerHour { get; } = Range("ends sleyed, an hour", 250, 600);

    public static Derived<WorkTime> Beaming { get; } = Time("beaming, tying on and tying up", 1, 2.5);

    public static Derived<WorkTime> Washing { get; } = Time("washing and pressing a piece", 0.25, 0.75);

    public static Derived<Number> FringeMinutesPerCentimetre { get; } = Range("fringe, minutes for a centimetre of width", 0.8, 2);

    public static Derived<Number> SewingMinutesPerCentimetre { get; } = Range("hem or seam, minutes for a centimetre", 0.4, 1.2);

    /// <summary>Picks in a minute, by the loom; each shuttle beyond the first slows the hands.</summary>
    public static Derived<Number> PicksPerMinute(LoomKind kind) => kind switch
    {
        LoomKind.RigidHeddle => Range("picks a minute, rigid heddle loom", 6, 14),
        LoomKind.Table => Range("picks a minute, table loom", 6, 14),
        LoomKind.Floor => Range("picks a minute, floor loom", 12, 28),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This is no kind of loom."),
    };

    /// <summary>Share of the speed that is left with a second shuttle or a clasp in the shed.</summary>
    public static Derived<Ratio> SecondShuttle { get; } = Derived.FromRange(
        "speed left with a second shuttle or a clasp", Ratio.FromPercent(50), Ratio.FromPercent(80), Source.CommonPractice);

    private static Derived<Number> Range(string label, double low, double high) =>
        Derived.FromRange(label, Number.FromValue(low), Number.FromValue(high), Source.CommonPractice);

    private static Derived<WorkTime> Time(string label, double low, double high) =>
        Derived.FromRange(label, WorkTime.FromHours(low), WorkTime.FromHours(high), Source.CommonPractice);
}
