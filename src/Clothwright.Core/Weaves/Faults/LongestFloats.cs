namespace Clothwright.Core.Weaves.Faults;

/// <summary>The longest floats of a finite piece of cloth, in threads passed over.</summary>
/// <param name="WarpFace">Ends over picks.</param>
/// <param name="WarpBack">Ends under picks.</param>
/// <param name="WeftFace">Picks over ends.</param>
/// <param name="WeftBack">Picks under ends.</param>
public readonly record struct LongestFloats(int WarpFace, int WarpBack, int WeftFace, int WeftBack)
{
    /// <summary>The longest floats of a cloth; floats stop at its edges.</summary>
    /// <param name="cloth">The cloth.</param>
    public static LongestFloats Of(Drawdown cloth)
    {
        int warpFace = 0, warpBack = 0, weftFace = 0, weftBack = 0;
        int[] column = new int[cloth.Ends];
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            int row = 0;
            for (int end = 0; end < cloth.Ends; end++)
            {
                // Runs of warp on top count up from 0, runs of weft on top count down.
                bool up = cloth[pick, end];
                row = up ? Math.Max(row, 0) + 1 : Math.Min(row, 0) - 1;
                column[end] = up ? Math.Max(column[end], 0) + 1 : Math.Min(column[end], 0) - 1;
                weftBack = Math.Max(weftBack, row);
                weftFace = Math.Max(weftFace, -row);
                warpFace = Math.Max(warpFace, column[end]);
                warpBack = Math.Max(warpBack, -column[end]);
            }
        }

        return new LongestFloats(warpFace, warpBack, weftFace, weftBack);
    }
}
