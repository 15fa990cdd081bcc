using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>Chooses which packages on the shelf to open.</summary>
internal static class ShelfChoice
{
    // Finest step in which masses are compared: 0.1 g, coarser only where very much yarn is needed.
    private const double StepGrams = 0.1;
    private const int MostSteps = 50_000;

    /// <summary>
    /// Subset of the packages that covers the target with the least to spare, and of those the one with fewest packages;
    /// all packages when together they do not cover it. Smaller packages come first, so that they are used up and one rest stays.
    /// </summary>
    public static ImmutableArray<StockLeft> SmallestLeftover(Mass target, ImmutableArray<StockLeft> shelf)
    {
        ImmutableArray<StockLeft> ordered = [.. shelf.OrderBy(s => s.AgreedMass.Value.Kilograms)];
        if (target.Grams == 0) return [];
        if (ordered.Sum(s => s.AgreedMass.Value.Kilograms) <= target.Kilograms) return ordered;
        double step = Math.Max(StepGrams, target.Grams / MostSteps);
        int goal = Math.Max(1, (int)Math.Ceiling(target.Grams / step - 1e-9));
        int[] sizes = [.. ordered.Select(s => (int)Math.Min(int.MaxValue / 4, Math.Floor(s.AgreedMass.Value.Grams / step + 1e-9)))];

        // fewest[s]: fewest packages whose sizes sum to s, below the goal; taken[i] remembers the choice for package i.
        int[] fewest = new int[goal];
        Array.Fill(fewest, int.MaxValue);
        fewest[0] = 0;
        var taken = new bool[sizes.Length][];
        (int Sum, int Count, int Item, int Before) best = (int.MaxValue, int.MaxValue, -1, 0);
        for (int i = 0; i < sizes.Length; i++)
        {
            taken[i] = new bool[goal];
            for (int sum = goal - 1; sum >= 0; sum--)
            {
                if (fewest[sum] == int.MaxValue) continue;
                int grown = sum + sizes[i];
                int count = fewest[sum] + 1;
                if (grown >= goal)
                {
                    if (grown < best.Sum || (grown == best.Sum && count < best.Count)) best = (grown, count, i, sum);
                }
                else if (count < fewest[grown])
                {
                    fewest[grown] = count;
                    taken[i][grown] = true;
                }
            }
        }

        if (best.Item < 0) return ordered;
        var chosen = new List<StockLeft> { ordered[best.Item] };
        int left = best.Before;
        for (int i = best.Item - 1; i >= 0 && left > 0; i--)
        {
            if (!taken[i][left]) continue;
            chosen.Add(ordered[i]);
            left -= sizes[i];
        }

        return [.. chosen.OrderBy(s => s.AgreedMass.Value.Kilograms)];
    }
}
