using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>A name of a hand-knitting thickness.</summary>
/// <param name="Region">Where it is used.</param>
/// <param name="Name">The name, lower case, for example <c>8-ply</c>.</param>
/// <param name="Classes">The classes it can mean; more than one where charts disagree.</param>
/// <param name="LinearDensity">Mass per length of wool-like yarns sold under the name, with the spread of the range seen.</param>
public sealed record KnittingName(KnittingRegion Region, string Name, ImmutableArray<KnittingClass> Classes, Derived<LinearDensity> LinearDensity);
