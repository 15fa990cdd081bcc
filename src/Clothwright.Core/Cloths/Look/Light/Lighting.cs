namespace Clothwright.Core.Cloths.Look.Light;

/// <summary>Where lamp and eye stand, in the frame of the cloth as it is seen.</summary>
/// <param name="Lamp">Towards the lamp, 1 long.</param>
/// <param name="Eye">Towards the eye, 1 long.</param>
public readonly record struct Lighting(Direction Lamp, Direction Eye)
{
    /// <summary>Share of light that comes from everywhere.</summary>
    public const float Ambient = 0.35f;

    /// <summary>Share of light that comes from the lamp.</summary>
    public const float Key = 0.65f;

    /// <summary>A window at the far left, seen from straight above.</summary>
    public static Lighting Window { get; } = new(Direction.Unit(-0.55, 0.6, 0.95), Direction.OffTheFace);

    /// <summary>The same lamp and eye over a tilted cloth.</summary>
    /// <param name="acrossRadians">How far the right edge is turned away from the eye.</param>
    /// <param name="alongRadians">How far the far edge is turned away from the eye.</param>
    public Lighting Tilted(double acrossRadians, double alongRadians) =>
        new(Lamp.FromTilted(acrossRadians, alongRadians), Eye.FromTilted(acrossRadians, alongRadians));
}
