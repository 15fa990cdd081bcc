using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>Takes yarn that was used up off its packages.</summary>
public static class StockUse
{
    /// <summary>The packages after some yarn was used: begun ones (the lightest) first, empty ones gone.</summary>
    /// <param name="packages">The packages before.</param>
    /// <param name="used">What was used, as the scale tells it.</param>
    /// <param name="place">The package it was taken from, from 0; null for the lightest first.</param>
    /// <returns>The packages that are left, in their order, or a problem: there is not so much yarn.</returns>
    public static Parsed<ImmutableArray<YarnPackage>> Take(ImmutableArray<YarnPackage> packages, Mass used, int? place = null)
    {
        if (place is { } wanted && (wanted < 0 || wanted >= packages.Length))
        {
            return new InputProblem($"There is no package {wanted + 1}; there are {packages.Length}.", "package", "Count the packages from 1 as they are listed.");
        }

        int[] order = place is { } only ? [only] : [.. Enumerable.Range(0, packages.Length).OrderBy(i => Net(packages[i]))];
        double there = order.Sum(i => Net(packages[i]));
        // A hair over is an error of rounding, not missing yarn.
        if (used.Kilograms > there + 1e-9)
        {
            return new InputProblem($"{used} are more than the {Mass.FromKilograms(there)} that are there.", "used", "Weigh the package again and give what is left instead, or give what was really used.");
        }

        double rest = used.Kilograms;
        YarnPackage?[] left = [.. packages];
        foreach (int i in order)
        {
            double taken = Math.Min(rest, Net(packages[i]));
            rest -= taken;
            double kept = Net(packages[i]) - taken;
            left[i] = kept <= 1e-9 && taken > 0 ? null : packages[i] with { GrossMass = Mass.FromKilograms(kept + packages[i].Tare.Kilograms) };
        }

        return (ImmutableArray<YarnPackage>)[.. left.OfType<YarnPackage>()];
    }

    private static double Net(YarnPackage package) => Math.Max(0, package.GrossMass.Kilograms - package.Tare.Kilograms);
}
