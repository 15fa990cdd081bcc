namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Numbers shafts so that the threading reads as straight or pointed where it can.</summary>
internal static class ShaftOrder
{
    /// <summary>A number from 1 for each kind of end.</summary>
    /// <param name="kindOf">Kind of each end, numbered from 0 by first appearance; −1 for an end on no shaft.</param>
    /// <param name="kinds">Kinds.</param>
    public static int[] Number(IReadOnlyList<int> kindOf, int kinds)
    {
        int[] number = [.. Enumerable.Range(1, kinds)];
        if (kinds < 3) return number;
        long[,] steps = new long[kinds, kinds];
        for (int end = 1; end < kindOf.Count; end++)
        {
            int a = kindOf[end - 1], b = kindOf[end];
            if (a < 0 || b < 0 || a == b) continue;
            steps[a, b]++;
            steps[b, a]++;
        }

        // Exchange numbers while that makes more steps between neighbouring shafts; first appearance stands if nothing is gained.
        for (bool better = true; better;)
        {
            better = false;
            for (int a = 0; a < kinds; a++)
            {
                for (int b = a + 1; b < kinds; b++)
                {
                    long before = Neighbours(a) + Neighbours(b);
                    (number[a], number[b]) = (number[b], number[a]);
                    if (Neighbours(a) + Neighbours(b) > before)
                    {
                        better = true;
                        continue;
                    }

                    (number[a], number[b]) = (number[b], number[a]);
                }
            }
        }

        return number;

        long Neighbours(int kind)
        {
            long sum = 0;
            for (int other = 0; other < kinds; other++)
            {
                int apart = Math.Abs(number[kind] - number[other]);
                if (apart == 1 || apart == kinds - 1) sum += steps[kind, other];
            }

            return sum;
        }
    }
}
