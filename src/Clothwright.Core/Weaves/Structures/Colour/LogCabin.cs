using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Log cabin: plain weave in dark and light by turns, two of a colour side by side where a block ends, so that stripes lie across in one block and along in the next.</summary>
public static class LogCabin
{
    /// <summary>One repeat: two blocks both ways.</summary>
    /// <param name="block">Threads in a block, 2 to 200.</param>
    /// <exception cref="InputProblemException">The block is out of range.</exception>
    public static Weave Of(int block = 4)
    {
        if (block is < 2 or > 200) throw new InputProblemException(new InputProblem($"A block of {block} threads is no log cabin.", "block", "Give 2 to 200 threads, for example 8."));
        ThreadOrder order = ThreadOrder.Of([.. Enumerable.Range(0, 2 * block).Select(i => (i + (i < block ? 0 : 1)) % 2)]);
        return ColourAndWeave.Of("log cabin", PlainWeave.Of(), order, order);
    }
}
