using Clothwright.Core.Colours;

namespace Clothwright.Core.Cloths.Faces;

/// <summary>One face of a cloth seen from so far that its threads run together.</summary>
/// <param name="Shares">Warp, weft and hole as shares of the area.</param>
/// <param name="Warp">Mean light of the warp that shows; black where none shows.</param>
/// <param name="Weft">Mean light of the weft that shows; black where none shows.</param>
/// <param name="Colour">The light of the face: each part weighted by its area.</param>
public readonly record struct FusedFace(VisibleShares Shares, LinearColour Warp, LinearColour Weft, LinearColour Colour);
