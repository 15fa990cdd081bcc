using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Basket (hopsack): plain weave with groups of ends and picks working as one.</summary>
public static class Basket
{
    /// <summary>Each end and each pick of plain weave stands for a group.</summary>
    public static Rule Rule { get; } = new("basket", "plain weave with each column repeated by its group of ends and each row by its group of picks", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="ends">Groups of ends.</param>
    /// <param name="picks">Groups of picks.</param>
    public static Weave Of(ThreadGroups ends, ThreadGroups picks)
    {
        string figures = ends.Sizes.SequenceEqual(picks.Sizes) ? $"{ends}" : $"{ends} ends, {picks} picks";
        return Rib.Grouped($"basket {figures}", Rule, ends, picks);
    }
}
