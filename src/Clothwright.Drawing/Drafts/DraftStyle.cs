using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Drawing.Drafts;

/// <summary>How a draft is drawn.</summary>
public sealed record DraftStyle
{
    /// <summary>Which way round; as it stands at the loom if not said.</summary>
    public DraftOrientation Orientation { get; init; } = DraftOrientation.AtTheLoom;

    /// <summary>How threading, tie-up and treadling are written.</summary>
    public CellNotation Notation { get; init; } = CellNotation.Numbers;

    /// <summary>How the crossings are coloured.</summary>
    public DrawdownInk Ink { get; init; } = DrawdownInk.Structure;

    /// <summary>Side of one cell on paper; above 0.</summary>
    public Length Cell { get; init; } = Length.FromMillimetres(2.8);

    /// <summary>Plan of the colour areas of clasped yarns, at the size of the draft; null for none.</summary>
    public ColourAreas? Areas { get; init; }

    /// <summary>What a check of the cloth found, to be marked in its place with a key below; null to mark nothing.</summary>
    public ClothMarks? Marks { get; init; }

    /// <summary>Whether a long run of repeats is drawn once or a few times, with a bracket that says how often it is worked.</summary>
    public bool BracketRepeats { get; init; } = true;

    /// <summary>Ends or picks up to which everything is drawn and no repeat is bracketed.</summary>
    public int DrawnInFull { get; init; } = 48;
}
