namespace Clothwright.TestKit.Photographs;

/// <summary>Where the middles of threads lie across the cloth, in spacings, with each a little off its place.</summary>
internal sealed class ThreadPlaces
{
    private readonly double[] _offsets;
    private readonly int _half;

    public ThreadPlaces(int count, double jitter, SeededChance chance)
    {
        _half = count / 2;
        _offsets = new double[count];
        for (int i = 0; i < count; i++) _offsets[i] = Math.Clamp(chance.Normal() * jitter, -0.35, 0.35);
    }

    /// <summary>The thread nearest a place, and how far the place is from its middle.</summary>
    public (int Index, double Off) Nearest(double place)
    {
        int middle = (int)Math.Round(place);
        (int Index, double Off) best = (middle, place - Middle(middle));
        foreach (int i in (ReadOnlySpan<int>)[middle - 1, middle + 1])
        {
            double off = place - Middle(i);
            if (Math.Abs(off) < Math.Abs(best.Off)) best = (i, off);
        }

        return best;
    }

    /// <summary>Middle of a thread.</summary>
    public double Middle(int index) => index + _offsets[Math.Clamp(index + _half, 0, _offsets.Length - 1)];
}
