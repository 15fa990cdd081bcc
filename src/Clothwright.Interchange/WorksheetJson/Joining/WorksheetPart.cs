namespace Clothwright.Interchange.WorksheetJson.Joining;

/// <summary>A part of a worksheet that is decided on as one: two people may each change another part, and both changes hold.</summary>
public enum WorksheetPart
{
    /// <summary>Title and note.</summary>
    Title,

    /// <summary>Units in which the worksheet is read.</summary>
    Units,

    /// <summary>Looms, reeds and rigid heddles at hand, and the loom chosen.</summary>
    Looms,

    /// <summary>Yarns at hand.</summary>
    Yarns,

    /// <summary>The weave of the warp.</summary>
    Weave,

    /// <summary>Purpose, sett and reed.</summary>
    Sett,

    /// <summary>Order of yarns across the warp.</summary>
    Colours,

    /// <summary>How ends are fitted, selvedges, sample, header, gap, and what the weaver knows better than the rules.</summary>
    Warp,

    /// <summary>The pieces with their wefts.</summary>
    Pieces,

    /// <summary>Currency and rates of work.</summary>
    Money,
}
