using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>How long a float is in the cloth.</summary>
public static class FloatLength
{
    /// <summary>The rule: threads passed by their sett.</summary>
    public static readonly Rule Rule = new("float length", "float length = threads passed ÷ threads per unit of length", Source.Derivation);

    /// <summary>The length of a float.</summary>
    /// <param name="found">The float; an endless one is measured over one repeat.</param>
    /// <param name="ends">Ends per unit of width, for weft floats.</param>
    /// <param name="picks">Picks per unit of length, for warp floats.</param>
    public static Derived<Length> Of(ThreadFloat found, Derived<Sett> ends, Derived<Sett> picks)
    {
        Derived<Whole> passed = Derived.Given(found.IsWarp ? "picks passed" : "ends passed", Whole.FromCount(found.Length), Source.Derivation, formula: "counted in the drawdown");
        return Derived.From<Length>($"length of {found}", Rule, passed, found.IsWarp ? picks : ends, (threads, sett) => threads / sett);
    }
}
