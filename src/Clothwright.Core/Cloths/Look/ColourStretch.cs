using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Cloths.Look;

/// <summary>One colour of a variegated yarn.</summary>
/// <param name="Colour">The colour under even light.</param>
/// <param name="Length">How long it lasts along the yarn; above 0.</param>
public readonly record struct ColourStretch(SrgbColour Colour, Length Length);
