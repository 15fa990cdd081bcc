using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>What of a yarn is not yet promised to a piece of work.</summary>
/// <param name="OnShelf">All of it on the shelf, at the agreed regain.</param>
/// <param name="Reserved">What is promised.</param>
/// <param name="Free">What may still be promised; 0 where too much is.</param>
/// <param name="Short">What is promised beyond what is there.</param>
public sealed record FreeStock(Derived<Mass> OnShelf, Derived<Mass> Reserved, Derived<Mass> Free, Mass Short)
{
    private static readonly Rule ShelfRule = new("yarn on the shelf", "sum of what is left on each package, at the agreed regain", Source.Definition);

    private static readonly Rule ReservedRule = new("yarn reserved", "sum of what is set aside for each worksheet", Source.Definition);

    private static readonly Rule FreeRule = new("free yarn", "free = on the shelf − reserved", Source.Definition);

    /// <summary>What is free of a yarn.</summary>
    /// <param name="stock">What is left on each package.</param>
    /// <param name="reserved">What is set aside, by the name of the work.</param>
    public static FreeStock Of(IReadOnlyList<StockLeft> stock, IReadOnlyList<(string Work, Mass Mass)> reserved)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(reserved);
        Derived<Mass> onShelf = Derived.Sum("on the shelf", ShelfRule, [.. stock.Select(s => s.AgreedMass)]);
        Derived<Mass> promised = Derived.Sum("reserved", ReservedRule, [.. reserved.Select(r => Derived.Decision($"for {r.Work}", r.Mass))]);
        Derived<Mass> free = Derived.From<Mass>("free", FreeRule, onShelf, promised, (shelf, kept) => Math.Max(0, shelf - kept));
        double excess = promised.Value.Kilograms - onShelf.Value.Kilograms;
        return new FreeStock(onShelf, promised, free, Mass.FromKilograms(Math.Max(0, excess)));
    }
}
