using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;

namespace Clothwright.Drawing.Faces;

/// <summary>One side of a piece of cloth, crossing by crossing: columns from the left, rows from the first pick, at the bottom.</summary>
internal sealed class ClothSide
{
    private readonly LookDescription _cloth;
    private readonly bool _back;

    /// <param name="cloth">The cloth.</param>
    /// <param name="face">The side.</param>
    /// <param name="frame">How much of it.</param>
    /// <exception cref="ArgumentException">The cloth has no threads or a thread has no width, or the frame is empty.</exception>
    public ClothSide(LookDescription cloth, Face face, ClothFrame frame)
    {
        if (cloth.Ends.IsDefaultOrEmpty || cloth.Picks.IsDefaultOrEmpty || cloth.Ends.Concat(cloth.Picks).Any(t => t.Width <= Length.Zero))
        {
            throw new ArgumentException("A cloth has at least one end and one pick, and each thread has a width.", nameof(cloth));
        }

        if (frame.Width <= Length.Zero || frame.Height <= Length.Zero)
        {
            throw new ArgumentException("A picture of a cloth has a width and a height.", nameof(frame));
        }

        _cloth = cloth;
        _back = face == Face.Back;
        Width = frame.Width.Metres;
        Height = frame.Height.Metres;
        Across = ThreadAxis.Lay(cloth.Ends, cloth.EndSett, frame.Width);
        Along = ThreadAxis.Lay(cloth.Picks, cloth.PickSett, frame.Height);
    }

    /// <summary>Width in metres.</summary>
    public double Width { get; }

    /// <summary>Height in metres.</summary>
    public double Height { get; }

    /// <summary>The ends as seen from the face.</summary>
    public ThreadAxis Across { get; }

    /// <summary>The picks.</summary>
    public ThreadAxis Along { get; }

    /// <summary>Whether the picture is turned over, left to right.</summary>
    public bool IsTurned => _back;

    /// <summary>Whether the end is on top on this side.</summary>
    /// <param name="pick">0-based pick.</param>
    /// <param name="end">0-based end, counted on the face.</param>
    public bool WarpOnTop(int pick, int end) => _cloth.Weave[pick % _cloth.Weave.Picks, end % _cloth.Weave.Ends] != _back;

    /// <summary>Colour of an end.</summary>
    public SrgbColour EndColour(int end) => _cloth.Ends[end % _cloth.Ends.Length].Colour;

    /// <summary>Colour of a pick.</summary>
    public SrgbColour PickColour(int pick) => _cloth.Picks[pick % _cloth.Picks.Length].Colour;
}
