namespace Clothwright.Core.Photographs;

/// <summary>How far a count from a photograph can be trusted.</summary>
public enum Certainty
{
    /// <summary>The photograph cannot tell; the number is a guess and a better picture is asked for.</summary>
    CannotTell,

    /// <summary>Probably right; a question is left open, or some signs are weak. Compare the grid with the cloth.</summary>
    FairlySure,

    /// <summary>Every sign agrees and no other count comes near.</summary>
    Sure,
}
