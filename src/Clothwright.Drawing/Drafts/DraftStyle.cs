using Clothwright.Core.Quantities;

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

    /// <summary>Whether a long run of repeats is drawn once or a few times, with a bracket that says how often it is worked.</summary>
    public bool BracketRepeats { get; init; } = true;

    /// <summary>Ends or picks up to which everything is drawn and no repeat is bracketed.</summary>
    public int DrawnInFull { get; init; } = 48;
}
