namespace Clothwright.Core.Weaves.Faults;

/// <summary>What a reading has to account for, row by row.</summary>
internal abstract class ClothToExplain(int ends, int picks)
{
    public int Ends => ends;

    public int Picks => picks;

    /// <summary>Packed crossings that a cloth leaves unexplained on a pick.</summary>
    /// <param name="pick">0-based pick.</param>
    /// <param name="word">Word of the row.</param>
    /// <param name="woven">That word of the cloth by the reading.</param>
    public abstract ulong Wrong(int pick, int word, ulong woven);

    /// <summary>Packed crossings that the reading changes without need.</summary>
    public abstract ulong Extra(int pick, int word, ulong woven);
}
