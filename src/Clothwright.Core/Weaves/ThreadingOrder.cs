using System.Collections.Immutable;

namespace Clothwright.Core.Weaves;

/// <summary>Numbers shafts so that a threading reads straight or pointed where it can.</summary>
internal static class ThreadingOrder
{
    /// <summary>New numbers for classes of threads.</summary>
    /// <remarks>
    /// Classes that follow each other are neighbours. If no class has more than two neighbours, they form a chain (pointed draw) or a ring
    /// (straight draw) and are numbered along it; otherwise they keep their order of first appearance.
    /// </remarks>
    /// <param name="classOf">Class of each thread, from 0, by first appearance.</param>
    /// <param name="count">Number of classes.</param>
    /// <returns>Number of each class, from 0.</returns>
    public static ImmutableArray<int> Numbers(ImmutableArray<int> classOf, int count)
    {
        var neighbours = new SortedSet<int>[count];
        for (int i = 0; i < count; i++) neighbours[i] = [];
        for (int i = 1; i < classOf.Length; i++)
        {
            if (classOf[i] == classOf[i - 1]) continue;
            neighbours[classOf[i]].Add(classOf[i - 1]);
            neighbours[classOf[i - 1]].Add(classOf[i]);
            if (neighbours[classOf[i]].Count > 2 || neighbours[classOf[i - 1]].Count > 2) return [.. Enumerable.Range(0, count)];
        }

        int start = FirstOf(classOf, neighbours);
        var numbers = new int[count];
        int previous = -1;
        int here = start;
        for (int number = 0; number < count; number++)
        {
            numbers[here] = number;
            int from = previous;
            // In a ring the first step goes to the class that appears next, class 1; afterwards there is one way on.
            int next = neighbours[here].FirstOrDefault(n => n != from, -1);
            previous = here;
            here = next;
        }

        return ImmutableArray.Create(numbers);
    }

    // A chain starts at that one of its ends from which the first step of the threading goes up; a ring starts at the first thread.
    private static int FirstOf(ImmutableArray<int> classOf, SortedSet<int>[] neighbours)
    {
        int[] chainEnds = [.. Enumerable.Range(0, neighbours.Length).Where(c => neighbours[c].Count < 2)];
        if (chainEnds.Length < 2) return classOf[0];
        // Walking from either end meets class 0 before or after class 1; the first step 0 to 1 should go up.
        int previous = -1;
        int here = chainEnds[0];
        while (here != 0 && here != 1)
        {
            int from = previous;
            int next = neighbours[here].First(n => n != from);
            previous = here;
            here = next;
        }

        return here == 0 ? chainEnds[0] : chainEnds[1];
    }
}
