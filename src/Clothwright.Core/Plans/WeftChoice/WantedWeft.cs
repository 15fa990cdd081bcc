using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans.Results;

namespace Clothwright.Core.Plans.WeftChoice;

/// <summary>The weft that a wanted face asks for, over the warp, in the weave and at the sett of a piece.</summary>
/// <param name="Face">The colour that the face is to have from afar.</param>
/// <param name="Light">Light that the weft would have to send; parts outside 0 to 1 say that no yarn can.</param>
public readonly record struct WantedWeft(SrgbColour Face, LinearColour Light)
{
    /// <summary>Whether a yarn can send this light.</summary>
    public bool IsReachable => WeftForFace.IsReachable(Light);

    /// <summary>The weft that a piece asks for; where the face shows warp alone, none can help, and the light says so.</summary>
    /// <param name="piece">The piece as planned; what its weft covers is taken from it.</param>
    /// <param name="face">The wanted colour of its face.</param>
    public static WantedWeft For(PiecePlan piece, SrgbColour face)
    {
        ArgumentNullException.ThrowIfNull(piece);
        FusedFace now = piece.Cloth.Washed.FusedColours().Face;
        double threads = now.Shares.Warp + now.Shares.Weft;
        double warp = now.Shares.Warp / Math.Max(threads, double.Epsilon);
        LinearColour wanted = LinearColour.From(face);
        return new WantedWeft(face, warp < 1 ? WeftForFace.Light(wanted, now.Warp, warp) : new LinearColour(double.NaN, double.NaN, double.NaN));
    }
}
