namespace Clothwright.Core.Plans.Cautions;

/// <summary>What 16 CFR 1610.1(d) says of a cloth for clothing.</summary>
public enum FlammabilityFinding
{
    /// <summary>Every fibre is on the list that needs no test.</summary>
    ExemptByFibre,

    /// <summary>A plain surface heavy enough to need no test.</summary>
    ExemptByMass,

    /// <summary>Not exempt: to be tested before it is sold as clothing in the United States.</summary>
    ToBeTested,
}
