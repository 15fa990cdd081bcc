namespace Clothwright.Core.Weaves;

/// <summary>After how many threads two repeats begin together again: their least common multiple.</summary>
internal static class CommonRepeat
{
    /// <summary>Threads of the round that holds both repeats whole.</summary>
    /// <param name="one">Threads of one repeat, above 0.</param>
    /// <param name="other">Threads of the other, above 0.</param>
    public static long Of(int one, int other)
    {
        (int a, int b) = (one, other);
        while (b != 0) (a, b) = (b, a % b);
        return (long)one / a * other;
    }
}
