using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Cloths.Hand;

/// <summary>How long the longest floats lie in the cloth.</summary>
public static class FloatLengths
{
    /// <summary>A float longer than this catches in use; common practice, no source.</summary>
    public static Length Catching { get; } = Length.FromMillimetres(10);

    /// <summary>Longest float of warp and of weft on either face, as a length on the cloth, the repeat read endlessly.</summary>
    /// <param name="cloth">The cloth.</param>
    public static (Length Warp, Length Weft) Longest(ClothGeometry cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        Drawdown weave = cloth.Question.Weave;
        int warp = LongestRun(weave.Transposed());
        int weft = LongestRun(weave);
        return (cloth.Question.Picks.Value.Spacing * warp, cloth.Question.Ends.Value.Spacing * weft);
    }

    private static int LongestRun(Drawdown lines)
    {
        int longest = 1;
        for (int line = 0; line < lines.Picks; line++)
        {
            int run = 1;
            for (int i = 1; i < 2 * lines.Ends; i++)
            {
                run = lines[line, i % lines.Ends] == lines[line, (i - 1) % lines.Ends] ? run + 1 : 1;
                longest = Math.Max(longest, Math.Min(run, lines.Ends));
            }
        }

        return longest;
    }
}
