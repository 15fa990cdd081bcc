using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Limits;

/// <summary>How close threads can be set, by one method.</summary>
/// <param name="Method">The method by its trade name.</param>
/// <param name="Ends">Closest ends.</param>
/// <param name="Picks">Closest picks beside those ends.</param>
/// <param name="Note">What the figure means, in a sentence.</param>
public sealed record SettLimit(string Method, Derived<Sett> Ends, Derived<Sett> Picks, string Note);
