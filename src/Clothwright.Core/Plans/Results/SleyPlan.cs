using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>How the ends are spaced: which reed or rigid heddle, and how many ends go where.</summary>
/// <param name="Tool">The reed or heddle, by its name on the bench; null when the bench holds none.</param>
/// <param name="Order">Ends in each dent, repeated across; for rigid heddles one end in each eye and slot of every heddle. Empty without a tool.</param>
/// <param name="Heddles">Rigid heddles used together; 0 with a reed.</param>
/// <param name="Sett">Ends per width that this gives, all layers together.</param>
/// <param name="Error">Sett given over sett wanted, less 1.</param>
public sealed record SleyPlan(string? Tool, ImmutableArray<int> Order, int Heddles, Derived<Sett> Sett, Ratio Error);
