using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Ribs: plain weave with several picks in a shed (ribs across) or several ends as one (ribs along).</summary>
public static class Rib
{
    /// <summary>Several picks in each shed: the warp bends round them and ribs run across.</summary>
    public static Rule WarpRule { get; } = new("warp rib", "plain weave with each row repeated by its group of picks", Source.Derivation);

    /// <summary>Several ends as one: the weft bends round them and ribs run along the cloth.</summary>
    public static Rule WeftRule { get; } = new("weft rib", "plain weave with each column repeated by its group of ends", Source.Derivation);

    /// <summary>One repeat of warp rib.</summary>
    /// <param name="picks">Groups of picks.</param>
    public static Weave Warp(ThreadGroups picks) => Grouped($"warp rib {picks}", WarpRule, ThreadGroups.Single, picks);

    /// <summary>One repeat of weft rib.</summary>
    /// <param name="ends">Groups of ends.</param>
    public static Weave Weft(ThreadGroups ends) => Grouped($"weft rib {ends}", WeftRule, ends, ThreadGroups.Single);

    internal static Weave Grouped(string name, Rule rule, ThreadGroups ends, ThreadGroups picks) =>
        Weave.FromTreadles(name, rule, ends.Order, [ShaftSet.Of(1), ShaftSet.Of(2)], picks.Order) with
        {
            Notes = picks.Sizes.Any(s => s > 1)
                ? ["Picks that share a shed pull back at the turn: carry the weft round an edge end (floating selvedge) or use two shuttles."]
                : [],
        };
}
