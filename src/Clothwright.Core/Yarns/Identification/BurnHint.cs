namespace Clothwright.Core.Yarns;

/// <summary>How a short end burns, held in tweezers over water.</summary>
public enum BurnHint
{
    /// <summary>Smells of burnt hair, goes out by itself, leaves a brittle black ash: wool or silk.</summary>
    BurntHair,

    /// <summary>Burns on and glows, smells of paper, leaves soft grey ash: cotton, linen, viscose.</summary>
    BurntPaper,

    /// <summary>Shrinks from the flame, melts to a hard bead: nylon, polyester, acrylic.</summary>
    HardBead,

    /// <summary>Melts and burns with a sour smell, leaves a bead that can be crushed: acetate.</summary>
    SourBead,
}
