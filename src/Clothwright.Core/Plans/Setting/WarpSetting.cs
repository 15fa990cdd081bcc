using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Setting;

/// <summary>What all pieces of a warp share: its threads, its loom, how close it is set.</summary>
/// <param name="Request">The decisions.</param>
/// <param name="Loom">The loom.</param>
/// <param name="Layers">Layers woven at once.</param>
/// <param name="Warp">Threads of the warp in their order.</param>
/// <param name="Sett">Ends per width in the reed, one layer.</param>
internal sealed record WarpSetting(PlanRequest Request, Loom Loom, int Layers, ThreadSystem Warp, Derived<Sett> Sett);
