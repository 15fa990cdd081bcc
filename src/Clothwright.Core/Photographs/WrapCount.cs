using System.Collections.Immutable;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Photographs;

/// <summary>Wraps of yarn on a rod, counted from a photograph.</summary>
/// <param name="Wraps">Wraps for a length of rod, with its working.</param>
/// <param name="Certainty">How far the count can be trusted.</param>
/// <param name="WrapsSeen">How many wraps the band shows.</param>
/// <param name="Touching">Whether the wraps seem to lie side by side: gaps shallow and alike.</param>
/// <param name="Diameter">The yarn's diameter, one spacing; null where the wraps do not touch.</param>
/// <param name="Questions">What is left open.</param>
/// <param name="Gaps">Places of the gaps in the photograph.</param>
public sealed record WrapCount(
    Derived<Sett> Wraps,
    Certainty Certainty,
    int WrapsSeen,
    bool Touching,
    Derived<Length>? Diameter,
    ImmutableArray<CountQuestion> Questions,
    ImmutableArray<PhotoPoint> Gaps);
