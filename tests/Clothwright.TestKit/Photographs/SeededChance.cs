namespace Clothwright.TestKit.Photographs;

/// <summary>Chance that is the same on every run: SplitMix64 (Steele, Lea and Flood 2014, from memory).</summary>
/// <param name="seed">Where the sequence starts.</param>
public sealed class SeededChance(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A number in 0 to 1, 1 left out.</summary>
    public double Next()
    {
        _state += 0x9E3779B97F4A7C15UL;
        ulong z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>A number in a range.</summary>
    public double Between(double low, double high) => low + (high - low) * Next();

    /// <summary>A whole number from 0 to below <paramref name="count"/>.</summary>
    public int Below(int count) => (int)(Next() * count);

    /// <summary>A number with a normal distribution, mean 0, standard deviation 1 (Box and Muller).</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Next())) * Math.Cos(2 * Math.PI * Next());
}
