using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>A yarn on the shelf: what it really is, and what is left of it.</summary>
/// <param name="Id">Short name for files, unique on the shelf, for example <c>tide-blue</c>.</param>
/// <param name="Name">Name for people, for example <c>8/2 bamboo, tide blue</c>.</param>
/// <param name="LinearDensity">Mass per length of the finished yarn, with the working from its count or label.</param>
/// <param name="Fibres">What it is made of.</param>
/// <param name="Construction">How it is made.</param>
/// <param name="Colour">Its colour under even light.</param>
public sealed record Yarn(
    string Id,
    string Name,
    Derived<LinearDensity> LinearDensity,
    FibreBlend Fibres,
    YarnConstruction Construction,
    SrgbColour Colour)
{
    /// <summary>Wraps touching on a ruler, if she measured them; null if not.</summary>
    public Derived<Sett>? MeasuredWraps { get; init; }

    /// <summary>How <see cref="MeasuredWraps"/> were counted.</summary>
    public WrapMeasure WrapMeasure { get; init; }

    /// <summary>Packages of it on the shelf.</summary>
    public ImmutableArray<YarnPackage> Packages { get; init; } = [];

    /// <summary>Price of one new package and how much it holds; null if unknown.</summary>
    public YarnOffer? Offer { get; init; }
}
