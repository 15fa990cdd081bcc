using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>Follows each shuttle from pick to pick: it goes to and fro, and turns at the side it has reached.</summary>
public static class ShuttlePath
{
    /// <summary>The turns of all shuttles, in the order in which they are woven.</summary>
    /// <remarks>
    /// As a repeat the last pick of a shuttle turns into its first; if a shuttle throws an odd number of picks in the repeat, it comes back
    /// on the other side, and two repeats are followed.
    /// </remarks>
    /// <param name="picks">Picks of the repeat or of the piece.</param>
    /// <param name="shuttles">Which shuttle throws each pick.</param>
    /// <param name="start">The side from which every shuttle starts.</param>
    /// <param name="reading">As an endless repeat, or as a piece with a first and a last pick.</param>
    public static ImmutableArray<ShuttleTurn> Of(int picks, ThreadOrder shuttles, ClothSide start, ClothReading reading = ClothReading.Repeat)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(picks, 1);
        ArgumentNullException.ThrowIfNull(shuttles);
        ILookup<int, int> picksOf = Enumerable.Range(0, picks).ToLookup(p => shuttles[p]);
        bool odd = picksOf.Any(g => g.Count() % 2 == 1);
        int repeats = reading == ClothReading.Repeat && odd ? 2 : 1;
        var turns = ImmutableArray.CreateBuilder<ShuttleTurn>();
        foreach (IGrouping<int, int> shuttle in picksOf)
        {
            int[] path = [.. Enumerable.Range(0, repeats).SelectMany(r => shuttle.Select(p => p + r * picks))];
            int count = reading == ClothReading.Repeat ? path.Length : path.Length - 1;
            for (int i = 0; i < count; i++)
            {
                ClothSide reached = (i % 2 == 0) == (start == ClothSide.Left) ? ClothSide.Right : ClothSide.Left;
                turns.Add(new ShuttleTurn(shuttle.Key, reached, path[i], path[(i + 1) % path.Length]));
            }
        }

        turns.Sort((a, b) => a.Pick.CompareTo(b.Pick));
        return turns.ToImmutable();
    }
}
