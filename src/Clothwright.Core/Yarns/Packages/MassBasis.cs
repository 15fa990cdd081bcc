namespace Clothwright.Core.Yarns;

/// <summary>How it is known what a package weighs.</summary>
public enum MassBasis
{
    /// <summary>Package and empty support were both weighed.</summary>
    Weighed,

    /// <summary>The package was weighed; its support is taken to weigh what supports of its form usually do.</summary>
    UsualSupport,

    /// <summary>Not weighed: as printed on the label, or as told.</summary>
    Told,
}
