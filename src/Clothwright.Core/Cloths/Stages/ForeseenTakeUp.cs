using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Stages;

/// <summary>Take-up to reckon with: geometry and the habit of the trade, of which either may be right for the cloth at hand.</summary>
public static class ForeseenTakeUp
{
    private const double WeightOfHabit = 0.5;

    /// <summary>Warp take-up off the loom.</summary>
    /// <param name="offLoom">The cloth at rest.</param>
    public static Derived<Ratio> Warp(ClothGeometry offLoom)
    {
        ArgumentNullException.ThrowIfNull(offLoom);
        return EitherOf("warp take-up", offLoom.WarpTakeUp, HabitualTakeUp.Warp(offLoom), WeightOfHabit);
    }

    /// <summary>Weft take-up on the loom; of a cloth ruled by one system the trade has no habit, and geometry stands alone.</summary>
    /// <param name="onLoom">The cloth under tension.</param>
    public static Derived<Ratio> Weft(ClothGeometry onLoom)
    {
        ArgumentNullException.ThrowIfNull(onLoom);
        double balanced = 1 - Math.Abs(HabitualTakeUp.LeanFraction(onLoom.WarpCover.Value.Value, onLoom.WeftCover.Value.Value));
        return balanced == 0 ? onLoom.WeftTakeUp : EitherOf("weft take-up", onLoom.WeftTakeUp, HabitualTakeUp.DrawIn, WeightOfHabit * balanced);
    }

    /// <summary>Two methods put together: the weighted mean, with the spread of both and that of their disagreement.</summary>
    /// <remarks>
    /// A mixture of two answers with weights 1 − w and w has the variance (1 − w) s1² + w s2² + w (1 − w) (difference)² (law of total
    /// variance). What the weighted mean does not carry of it is a cause of its own: which method fits this cloth.
    /// </remarks>
    /// <param name="label">What it is called.</param>
    /// <param name="geometry">By geometry, which knows nothing of the scatter from piece to piece; it is added.</param>
    /// <param name="habit">By the habit of the trade.</param>
    /// <param name="habitShare">Weight of the habit, 0 to 1.</param>
    public static Derived<Ratio> EitherOf(string label, Derived<Ratio> geometry, Derived<Ratio> habit, double habitShare)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(habit);
        double scatter = Calibration.LearnedValue.UsualScatter.Value;
        double own = scatter * scatter + geometry.StandardDeviation * geometry.StandardDeviation + habit.StandardDeviation * habit.StandardDeviation;
        Derived<Ratio> piece = Derived.Given("scatter from piece to piece", Ratio.Zero, Source.CommonPractice, scatter, $"scatter of {label}, piece by piece");
        Derived<Number> fits = Derived.Given(
            "which method fits this cloth", Number.FromValue(0), Source.Derivation, 1, $"which method fits, {label}", "0: between the two");
        string w = habitShare.ToString("0.##", CultureInfo.InvariantCulture);
        return Derived.From<Ratio>(
            label,
            new Rule(
                "geometry and habit of the trade",
                $"geometry × (1 − {w}) + habit × {w}; the spread also holds how far the two disagree",
                Source.CommonPractice),
            [geometry, habit, piece, fits],
            v => v[0] + v[2] + habitShare * (v[1] - v[0] - v[2]) + v[3] * Math.Sqrt(habitShare * (1 - habitShare) * (own + (v[1] - v[0]) * (v[1] - v[0]))));
    }
}
