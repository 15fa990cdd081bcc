using Clothwright.Cli.Commands;
using Clothwright.Core.Colours;
using Clothwright.Core.Yarns;

namespace Clothwright.Cli.Cloths;

/// <summary>A yarn as it is given in options.</summary>
/// <param name="Size">Count or label.</param>
/// <param name="SizeOption">The option that gave it.</param>
/// <param name="System">Count system, where the size does not say it.</param>
/// <param name="Fibre">Fibre or blend.</param>
/// <param name="FibreOption">The option that gave it.</param>
/// <param name="Construction">How it is made.</param>
/// <param name="Colour">Its colour.</param>
internal sealed record YarnWords(
    string Size, string SizeOption, CountSystem? System, string Fibre, string FibreOption, YarnConstruction Construction, SrgbColour Colour)
{
    /// <summary>Undyed linen, where no colour is given.</summary>
    public static SrgbColour Undyed { get; } = new(0xe9, 0xe1, 0xcf);

    /// <summary>The yarn.</summary>
    /// <param name="id">warp or weft.</param>
    /// <exception cref="Core.Quantities.InputProblemException">Size or fibre cannot be read.</exception>
    public Yarn ToYarn(string id)
    {
        var blend = FibreBlend.Parse(Fibre, FibreOption).Value;
        string fibres = blend.ToString();
        string name = System is not { } system ? $"{Size.Trim()} {fibres}"
            : system.Definition().Name == fibres ? $"{Size.Trim()} {fibres}"
            : $"{Size.Trim()} {fibres} ({system.Definition().Name} count)";
        return new Yarn(id, name, SizeArgument.Read(Size, System, SizeOption), blend, Construction, Colour);
    }
}
