namespace Clothwright.Core.Weaves.Fitting;

/// <summary>What is to be kept small when a draft is changed to fit fewer shafts.</summary>
public enum ReductionAim
{
    /// <summary>Ends threaded otherwise; among equals, crossings changed.</summary>
    FewestEnds,

    /// <summary>Crossings changed; among equals, ends threaded otherwise.</summary>
    FewestCrossings,
}
