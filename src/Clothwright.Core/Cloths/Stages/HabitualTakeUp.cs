using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Stages;

/// <summary>Take-up as handweavers allow for it: everything between the warp as wound and the cloth at rest, by experience.</summary>
/// <remarks>
/// Geometry counts the bends of ideal threads alone. The habit also holds what the stretched yarn takes back when it leaves the loom,
/// soft threads that spread and bend in their floats, and an uneven beat. It does not tell one balanced weave from another.
/// </remarks>
public static class HabitualTakeUp
{
    // Difference of cover from which a cloth begins to be, and is, ruled by one system.
    private const double BeginsToLean = 0.25;

    private const double Leans = 0.5;

    private static readonly Derived<Ratio> Balanced = Habit("warp take-up of balanced cloth", 8, 12);

    private static readonly Derived<Ratio> WarpFaced = Habit("warp take-up of warp-faced cloth", 10, 30);

    private static readonly Derived<Ratio> WeftFaced = Habit("warp take-up of weft-faced cloth", 2, 5);

    /// <summary>Draw-in that handweavers allow for in balanced cloth.</summary>
    public static Derived<Ratio> DrawIn { get; } = Habit("draw-in of balanced cloth", 5, 10);

    /// <summary>Warp take-up by habit: balanced, warp-faced, weft-faced, or between.</summary>
    /// <param name="cloth">The cloth off the loom.</param>
    public static Derived<Ratio> Warp(ClothGeometry cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        double lean = LeanFraction(cloth.WarpCover.Value.Value, cloth.WeftCover.Value.Value);
        if (lean == 0) return Balanced;
        return Derived.From<Ratio>(
            "warp take-up by habit",
            new Rule("between balanced and faced", "habit of balanced cloth to habit of faced cloth, by how far one cover exceeds the other (from 0.25 to 0.5)", Source.CommonPractice),
            [Balanced, lean > 0 ? WarpFaced : WeftFaced, cloth.WarpCover, cloth.WeftCover],
            v => v[0] + Math.Abs(LeanFraction(v[2], v[3])) * (v[1] - v[0]));
    }

    /// <summary>How far a cloth is ruled by one system: 0 balanced, 1 warp-faced, −1 weft-faced.</summary>
    /// <param name="warpCover">Share of the width that ends cover.</param>
    /// <param name="weftCover">Share of the length that picks cover.</param>
    public static double LeanFraction(double warpCover, double weftCover)
    {
        double difference = warpCover - weftCover;
        return Math.Sign(difference) * Math.Clamp((Math.Abs(difference) - BeginsToLean) / (Leans - BeginsToLean), 0, 1);
    }

    private static Derived<Ratio> Habit(string label, double low, double high) =>
        Derived.FromHabit(label, Ratio.FromPercent(low), Ratio.FromPercent(high), Source.CommonPractice);
}
