using System.Runtime.Intrinsics;

namespace Clothwright.Core.Weaves;

/// <summary>A square of 64 by 64 crossings in 64 words.</summary>
internal static class BitBlock
{
    /// <summary>Exchanges rows and columns of four blocks at once, one in each part of the vectors.</summary>
    /// <param name="blocks">64 vectors.</param>
    public static void Transpose(Span<Vector256<ulong>> blocks)
    {
        ulong mask = 0x00000000FFFFFFFFUL;
        for (int step = 32; step != 0; step >>= 1, mask ^= mask << step)
        {
            Vector256<ulong> masks = Vector256.Create(mask);
            for (int k = 0; k < 64; k = ((k | step) + 1) & ~step)
            {
                Vector256<ulong> exchange = ((blocks[k] >>> step) ^ blocks[k | step]) & masks;
                blocks[k] ^= exchange << step;
                blocks[k | step] ^= exchange;
            }
        }
    }

    /// <summary>Exchanges rows and columns in place: bit j of word i goes to bit i of word j.</summary>
    /// <remarks>Exchange of ever smaller off-diagonal squares (H. S. Warren, Hacker's Delight, section 7-3, from memory).</remarks>
    /// <param name="block">64 words.</param>
    public static void Transpose(Span<ulong> block)
    {
        ulong mask = 0x00000000FFFFFFFFUL;
        for (int step = 32; step != 0; step >>= 1, mask ^= mask << step)
        {
            for (int k = 0; k < 64; k = ((k | step) + 1) & ~step)
            {
                ulong exchange = ((block[k] >> step) ^ block[k | step]) & mask;
                block[k] ^= exchange << step;
                block[k | step] ^= exchange;
            }
        }
    }
}
