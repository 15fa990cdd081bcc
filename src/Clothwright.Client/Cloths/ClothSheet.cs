using System.Runtime.InteropServices;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Client.Cloths;

/// <summary>Hands a cloth to the canvas.</summary>
internal static class ClothSheet
{
    private const int NumbersPerThread = 4;

    /// <summary>Shows a cloth.</summary>
    /// <param name="canvas">Id of the canvas.</param>
    /// <param name="look">The cloth.</param>
    /// <param name="units">Units of the ticks along its edges.</param>
    public static void Show(string canvas, LookDescription look, UnitStyle units) => PageScript.ShowCloth(
        canvas,
        Rows(look.Weave),
        look.Weave.Ends,
        look.Weave.Picks,
        Looks(look.Ends),
        Looks(look.Picks),
        look.EndSett.PerCentimetre,
        look.PickSett.PerCentimetre,
        look.Width?.Centimetres ?? 0,
        units == UnitStyle.Customary);

    /// <summary>The packed rows of a drawdown, pick after pick, eight bytes a word.</summary>
    public static byte[] Rows(Drawdown cloth)
    {
        int perPick = cloth.WordsPerPick * sizeof(ulong);
        var rows = new byte[perPick * cloth.Picks];
        for (int pick = 0; pick < cloth.Picks; pick++) MemoryMarshal.AsBytes(cloth.Row(pick)).CopyTo(rows.AsSpan(pick * perPick));
        return rows;
    }

    // Red, green, blue (0 to 255) and width in centimetres of each thread.
    private static double[] Looks(IReadOnlyList<ThreadLook> threads)
    {
        var looks = new double[threads.Count * NumbersPerThread];
        for (int i = 0; i < threads.Count; i++)
        {
            (looks[4 * i], looks[4 * i + 1], looks[4 * i + 2]) = (threads[i].Colour.Red, threads[i].Colour.Green, threads[i].Colour.Blue);
            looks[4 * i + 3] = threads[i].Width.Centimetres;
        }

        return looks;
    }
}
