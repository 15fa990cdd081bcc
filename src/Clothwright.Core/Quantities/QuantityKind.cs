namespace Clothwright.Core.Quantities;

/// <summary>What a number measures, and so how it is written for a person.</summary>
public enum QuantityKind
{
    /// <summary>A plain ratio without unit: a fraction, a crimp, a share. Base unit 1.</summary>
    Ratio,

    /// <summary>A whole number of things: ends, picks, balls. Base unit 1.</summary>
    Whole,

    /// <summary>A length. Base unit metre.</summary>
    Length,

    /// <summary>A mass. Base unit kilogram.</summary>
    Mass,

    /// <summary>Mass per length of a yarn. Base unit tex (gram per kilometre).</summary>
    LinearDensity,

    /// <summary>Threads per width or length of cloth. Base unit threads per metre.</summary>
    Sett,

    /// <summary>Mass per area of cloth. Base unit gram per square metre.</summary>
    ArealDensity,

    /// <summary>Mass per volume of fibre or yarn. Base unit gram per cubic centimetre.</summary>
    Density,

    /// <summary>Money in the currency of the worksheet. Base unit one of that currency.</summary>
    Money,

    /// <summary>Working time. Base unit hour.</summary>
    WorkTime,

    /// <summary>A number that is no share: a count of yarn, a factor from a table. Base unit 1.</summary>
    Number,
}
