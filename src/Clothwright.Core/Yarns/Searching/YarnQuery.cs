using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>What is sought on the shelf. What is left null does not matter.</summary>
public sealed record YarnQuery
{
    /// <summary>Words that must all stand in the yarn's name, fibres, construction or lots; case does not matter.</summary>
    public string Words { get; init; } = "";

    /// <summary>A fibre that must be in it, by its id.</summary>
    public string? FibreId { get; init; }

    /// <summary>The finest yarn that will do.</summary>
    public LinearDensity? Finest { get; init; }

    /// <summary>The thickest yarn that will do.</summary>
    public LinearDensity? Thickest { get; init; }

    /// <summary>A colour it should be near; the nearest comes first.</summary>
    public SrgbColour? Near { get; init; }

    /// <summary>How far from <see cref="Near"/> a colour may be, as a CIEDE2000 difference; null for any.</summary>
    public double? MostDifferent { get; init; }
}
