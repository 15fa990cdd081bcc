using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts;

/// <summary>The thread that changes face most often, and the limit the other system would have if all threads did as it does.</summary>
/// <param name="Thread">0-based pick (for ends) or end (for picks).</param>
/// <param name="Changes">Changes of face in one repeat.</param>
/// <param name="Limit">The limit at that thread, ends plus intersections.</param>
public sealed record TightLine(int Thread, int Changes, Derived<Sett> Limit);
