using System.Runtime.InteropServices;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Client.Cloths;

/// <summary>Hands a cloth to the canvas.</summary>
internal static class ClothSheet
{
    /// <summary>Shows a cloth.</summary>
    /// <param name="canvas">Id of the canvas.</param>
    /// <param name="look">The cloth.</param>
    /// <param name="units">Units of the ticks along its edges.</param>
    public static void Show(string canvas, LookDescription look, UnitStyle units)
    {
        LookNumbers numbers = LookNumbers.Of(look);
        LookArrays arrays = LookArrays.Of(numbers);
        PageScript.ShowCloth(
            canvas,
            Rows(look.Weave),
            look.Weave.Ends,
            look.Weave.Picks,
            arrays.Looks,
            arrays.Lustres,
            arrays.Lights,
            arrays.Stretches,
            arrays.Ends,
            arrays.Picks,
            arrays.SharedEnds,
            arrays.SharedPicks,
            arrays.Measures,
            units == UnitStyle.Customary);
    }

    /// <summary>The packed rows of a drawdown, pick after pick, eight bytes a word.</summary>
    public static byte[] Rows(Drawdown cloth) => MemoryMarshal.AsBytes(cloth.Rows).ToArray();

    /// <summary>Shows another weave of the threads that the canvas shows already.</summary>
    /// <param name="canvas">Id of the canvas.</param>
    /// <param name="weave">The weave.</param>
    public static void ShowWeave(string canvas, Drawdown weave) => PageScript.ShowWeave(canvas, Rows(weave), weave.Ends, weave.Picks);
}
