using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Commands;

/// <summary>Reads a colour given as an argument.</summary>
internal static class ColourArgument
{
    /// <summary>The colour.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="name">Which argument it is.</param>
    /// <exception cref="InputProblemException">The text is not a colour.</exception>
    public static SrgbColour Read(string text, string name) => SrgbColour.Parse(text).At(name);
}
