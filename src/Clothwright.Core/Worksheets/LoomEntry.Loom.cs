using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Worksheets;

public sealed partial record LoomEntry
{
    /// <summary>The loom, with its waste as measured or as is customary.</summary>
    public Loom ToLoom()
    {
        int shafts = Kind == LoomKind.RigidHeddle ? RigidHeddles + 1 : Shafts;
        Derived<Length> waste = Waste is { } measured
            ? Derived.Given("loom waste", measured, Source.Measured)
            : LoomWaste.Customary(Kind, shafts, Shed);
        return new Loom(Id, Name, Kind, WeavingWidth, shafts, Treadles, Shed, waste)
        {
            RigidHeddles = RigidHeddles,
            WarpBeams = WarpBeams,
            HeddlesPerShaft = HeddlesPerShaft,
        };
    }
}
