using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Worksheets;

/// <summary>A yarn as it stands on the worksheet. Its fineness is given in one of three ways: count, label or tex.</summary>
public sealed partial record YarnEntry
{
    /// <summary>Short name, unique on the shelf.</summary>
    public required string Id { get; init; }

    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Count as written, for example <c>8/2</c>; null when label or tex is given.</summary>
    public string? Count { get; init; }

    /// <summary>System of the count, for example <c>cotton</c>.</summary>
    public string? CountSystem { get; init; }

    /// <summary>Length and mass as printed, for example <c>400 m / 100 g</c>; null when count or tex is given.</summary>
    public string? Label { get; init; }

    /// <summary>Fineness as known; null when count or label is given.</summary>
    public LinearDensity? LinearDensity { get; init; }

    /// <summary>What it is made of; the shares sum to 1.</summary>
    public required ImmutableArray<FibreEntry> Fibres { get; init; }

    /// <summary>How it is made.</summary>
    public YarnConstruction Construction { get; init; } = YarnConstruction.Spun;

    /// <summary>Its colour under even light.</summary>
    public required SrgbColour Colour { get; init; }

    /// <summary>Wraps touching on a ruler, as measured; null if not.</summary>
    public Sett? Wraps { get; init; }

    /// <summary>Packages of it on the shelf.</summary>
    public ImmutableArray<YarnPackage> Packages { get; init; } = [];

    /// <summary>How it can be bought; null if unknown.</summary>
    public YarnOffer? Offer { get; init; }
}
