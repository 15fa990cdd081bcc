namespace Clothwright.Core.Cloths.Look.Light;

/// <summary>A direction in the frame of the cloth: x along the weft, y along the warp away from the weaver, z off the face towards the eye.</summary>
/// <param name="X">Along the weft.</param>
/// <param name="Y">Along the warp.</param>
/// <param name="Z">Off the face.</param>
public readonly record struct Direction(double X, double Y, double Z)
{
    /// <summary>Straight off the face.</summary>
    public static Direction OffTheFace { get; } = new(0, 0, 1);

    /// <summary>Length; 1 for a direction proper.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>Sum.</summary>
    public static Direction operator +(Direction left, Direction right) => new(left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    /// <summary>Difference.</summary>
    public static Direction operator -(Direction left, Direction right) => new(left.X - right.X, left.Y - right.Y, left.Z - right.Z);

    /// <summary>Made longer or shorter.</summary>
    public static Direction operator *(Direction direction, double factor) => new(direction.X * factor, direction.Y * factor, direction.Z * factor);

    /// <summary>The same direction, 1 long.</summary>
    /// <param name="x">Along the weft.</param>
    /// <param name="y">Along the warp.</param>
    /// <param name="z">Off the face.</param>
    public static Direction Unit(double x, double y, double z)
    {
        var direction = new Direction(x, y, z);
        return direction * (1 / direction.Length);
    }

    /// <summary>Product of lengths and the cosine between.</summary>
    public double Dot(Direction other) => X * other.X + Y * other.Y + Z * other.Z;

    /// <summary>The direction as seen from a cloth tilted under it.</summary>
    /// <param name="acrossRadians">How far the right edge of the cloth is turned away from the eye, about the warp.</param>
    /// <param name="alongRadians">How far the far edge of the cloth is turned away from the eye, about the weft.</param>
    public Direction FromTilted(double acrossRadians, double alongRadians)
    {
        (double sx, double cx) = Math.SinCos(acrossRadians);
        var turned = new Direction(X * cx - Z * sx, Y, X * sx + Z * cx);
        (double sy, double cy) = Math.SinCos(alongRadians);
        return new Direction(turned.X, turned.Y * cy - turned.Z * sy, turned.Y * sy + turned.Z * cy);
    }
}
