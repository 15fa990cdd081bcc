using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>What a yarn without label turned out to be.</summary>
/// <param name="LinearDensity">Mass per length as measured, with its spread.</param>
/// <param name="Readings">Trade counts and fibres it can be, likeliest first.</param>
/// <param name="Unlisted">How likely it is none of them.</param>
/// <param name="KnittingClasses">Hand-knitting classes by wraps, or by length per mass where wraps are missing.</param>
/// <param name="NextTests">What to try next to part the readings, with cautions where a test can hurt.</param>
public sealed record IdentifiedYarn(
    Derived<LinearDensity> LinearDensity,
    ImmutableArray<YarnReading> Readings,
    Ratio Unlisted,
    ImmutableArray<KnittingClass> KnittingClasses,
    ImmutableArray<string> NextTests);
