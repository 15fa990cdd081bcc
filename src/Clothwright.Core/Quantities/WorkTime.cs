namespace Clothwright.Core.Quantities;

/// <summary>Time at work, held in hours. Finite, 0 or more.</summary>
public readonly record struct WorkTime : IQuantity<WorkTime>, IComparable<WorkTime>
{
    private WorkTime(double value) => Hours = value;

    /// <summary>Nothing at all.</summary>
    public static WorkTime Zero => default;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.WorkTime;

    /// <value>Hours.</value>
    public double Hours { get; }

    /// <inheritdoc />
    public double BaseValue => Hours;

    /// <summary>Sum.</summary>
    public static WorkTime operator +(WorkTime left, WorkTime right) => FromHours(left.Hours + right.Hours);

    /// <summary>Taken a number of times.</summary>
    public static WorkTime operator *(WorkTime left, double factor) => FromHours(left.Hours * factor);

    /// <summary>Less than.</summary>
    public static bool operator <(WorkTime left, WorkTime right) => left.Hours < right.Hours;

    /// <summary>More than.</summary>
    public static bool operator >(WorkTime left, WorkTime right) => left.Hours > right.Hours;

    /// <summary>Less than or as much as.</summary>
    public static bool operator <=(WorkTime left, WorkTime right) => left.Hours <= right.Hours;

    /// <summary>More than or as much as.</summary>
    public static bool operator >=(WorkTime left, WorkTime right) => left.Hours >= right.Hours;

    /// <inheritdoc cref="FromHours" />
    public static WorkTime FromBase(double baseValue) => FromHours(baseValue);

    /// <param name="value">Hours; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite, 0 or more.</exception>
    public static WorkTime FromHours(double value) => double.IsFinite(value) && value >= 0
        ? new WorkTime(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A working time in hours is a finite number, 0 or more.");

    /// <param name="minutes">Minutes; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is below 0 or not finite.</exception>
    public static WorkTime FromMinutes(double minutes) => FromHours(minutes / 60);

    /// <inheritdoc />
    public int CompareTo(WorkTime other) => Hours.CompareTo(other.Hours);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, Hours, UnitStyle.Metric);
}
