using Clothwright.Core.Colours;

namespace Clothwright.Core.Publishing;

/// <summary>Neighbouring ends of one yarn, wound one after another.</summary>
/// <param name="FirstEnd">Number of the first end, counted from 1 at the left as the weaver sits.</param>
/// <param name="Ends">How many ends.</param>
/// <param name="Yarn">Name of the yarn.</param>
/// <param name="Colour">Its colour.</param>
public sealed record WindingTurn(int FirstEnd, int Ends, string Yarn, SrgbColour Colour)
{
    /// <summary>Number of the last end.</summary>
    public int LastEnd => FirstEnd + Ends - 1;
}
