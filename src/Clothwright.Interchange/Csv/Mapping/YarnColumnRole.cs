namespace Clothwright.Interchange.Csv;

/// <summary>What a column of someone's table of yarns tells.</summary>
public enum YarnColumnRole
{
    /// <summary>Nothing that is kept.</summary>
    Ignore,

    /// <summary>Anything, in free words, as in <c>8/2 bamboo, 200 g cone, tide blue</c>.</summary>
    Words,

    /// <summary>A short name of its own.</summary>
    Id,

    /// <summary>Name of the yarn.</summary>
    Name,

    /// <summary>Name of the colour.</summary>
    ColourName,

    /// <summary>The colour, as in <c>#2f5f77</c>.</summary>
    Colour,

    /// <summary>The count; its unit is the count system.</summary>
    Count,

    /// <summary>The count system.</summary>
    CountSystem,

    /// <summary>Length and mass as printed.</summary>
    Label,

    /// <summary>What it is made of.</summary>
    Fibres,

    /// <summary>How it is made.</summary>
    Construction,

    /// <summary>Ball, skein, cone or tube.</summary>
    Form,

    /// <summary>Yarn in one package; its unit is a unit of mass.</summary>
    NetMass,

    /// <summary>One package on the scale, support and all; its unit is a unit of mass.</summary>
    GrossMass,

    /// <summary>The empty support; its unit is a unit of mass.</summary>
    Tare,

    /// <summary>How many packages there are.</summary>
    Packages,

    /// <summary>Dye lot.</summary>
    Lot,

    /// <summary>Price of one package.</summary>
    Price,
}
