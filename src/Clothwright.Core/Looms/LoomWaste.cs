using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Looms;

/// <summary>Warp that cannot be woven: knots in front, and what stays behind heddles and reed. Her own loom's record overrides it.</summary>
public static class LoomWaste
{
    /// <summary>The customary waste of a loom, with its range.</summary>
    /// <param name="kind">Kind of loom.</param>
    /// <param name="shafts">Shafts; eight and more stand deeper.</param>
    /// <param name="shed">How the shed opens; a countermarche stands deeper.</param>
    public static Derived<Length> Customary(LoomKind kind, int shafts, ShedAction shed)
    {
        (double low, double high) = kind switch
        {
            LoomKind.RigidHeddle => (40, 60),
            LoomKind.Table => (50, 70),
            _ when shafts >= 8 || shed == ShedAction.Countermarche => (80, 110),
            _ => (70, 90),
        };
        return Derived.FromRange("loom waste", Length.FromCentimetres(low), Length.FromCentimetres(high), Source.CommonPractice);
    }

    /// <summary>What is saved by tying a new warp to the ends of an old one that is still threaded.</summary>
    public static Derived<Length> SavedByTyingOn { get; } =
        Derived.FromRange("saved by tying on", Length.FromCentimetres(20), Length.FromCentimetres(30), Source.CommonPractice);

    /// <summary>The waste when the new warp is tied to an old one.</summary>
    /// <param name="waste">Waste of the loom threaded anew.</param>
    public static Derived<Length> TiedOn(Derived<Length> waste) => Derived.From<Length>(
        "loom waste, tied on",
        new Rule("tying on", "waste − what tying on saves, not below 0", Source.CommonPractice),
        waste,
        SavedByTyingOn,
        (whole, saved) => Math.Max(0, whole - saved));
}
