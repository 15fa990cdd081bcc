namespace Clothwright.Core.Cloths.Look.Sections;

/// <summary>The slant of a thread's fibres.</summary>
public static class ThreadTwist
{
    /// <summary>Slant to the thread's way: atan(π d T), from memory of yarn geometry (Gégauff; Schwarz).</summary>
    /// <param name="diameterMetres">Diameter.</param>
    /// <param name="turnsPerMetre">Turns; above 0 for Z twist, below for S.</param>
    /// <returns>Radians.</returns>
    public static double AngleRadians(double diameterMetres, double turnsPerMetre) => Math.Atan(Math.PI * diameterMetres * turnsPerMetre);
}
