namespace Clothwright.Core.Colours.Stripes;

/// <summary>A row of numbers that looks random and is the same for the same seed, everywhere (G. Steele, D. Lea and C. Flood, 2014).</summary>
/// <param name="seed">The seed, shown and kept with what was made from it.</param>
public sealed class SplitMix64(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            ulong mixed = _state += 0x9e3779b97f4a7c15;
            mixed = (mixed ^ (mixed >> 30)) * 0xbf58476d1ce4e5b9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94d049bb133111eb;
            return mixed ^ (mixed >> 31);
        }
    }

    /// <summary>The next number from 0 up to, not including, 1: the upper 53 bits.</summary>
    public double NextUnit() => (Next() >> 11) * (1.0 / (1UL << 53));
}
