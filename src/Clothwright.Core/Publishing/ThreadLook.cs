using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing;

/// <summary>How one thread looks in the cloth.</summary>
/// <param name="Colour">Its colour under even light.</param>
/// <param name="Width">How wide it lies in the cloth; above 0.</param>
public readonly record struct ThreadLook(SrgbColour Colour, Length Width);
