namespace Clothwright.Core.Plans.Briefs;

/// <summary>Whom a piece is for, as far as it changes cautions.</summary>
public enum Wearer
{
    /// <summary>A grown person.</summary>
    Adult,

    /// <summary>A child, from 1 to 14 years.</summary>
    Child,

    /// <summary>A baby in its first year.</summary>
    Baby,

    /// <summary>Not worn: the house.</summary>
    Household,
}
