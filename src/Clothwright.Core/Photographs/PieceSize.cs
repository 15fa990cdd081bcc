using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Photographs;

/// <summary>Width and length of a piece of cloth, measured between its edges in a photograph.</summary>
/// <param name="Width">From left to right as pictured, with its working.</param>
/// <param name="Length">From top to bottom as pictured, with its working.</param>
/// <param name="Certainty">How far they can be trusted.</param>
public sealed record PieceSize(Derived<Length> Width, Derived<Length> Length, Certainty Certainty);
