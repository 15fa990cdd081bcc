namespace Clothwright.TestKit.Photographs;

/// <summary>A pinhole camera over a flat cloth: from a pixel to a place on the cloth, and back.</summary>
public sealed class CameraView
{
    private readonly SyntheticSwatch _swatch;
    private readonly double _focal;
    private readonly (double X, double Y, double Z) _across;
    private readonly (double X, double Y, double Z) _along;
    private readonly (double X, double Y, double Z) _normal;
    private readonly double _cos;
    private readonly double _sin;

    /// <summary>The view of one photograph.</summary>
    public CameraView(SyntheticSwatch swatch)
    {
        _swatch = swatch;
        _focal = swatch.PixelsPerMillimetre * swatch.DistanceMillimetres;
        (double sin, double cos) = Math.SinCos(swatch.TiltDegrees * Math.PI / 180);
        (double ty, double tx) = Math.SinCos(swatch.TiltTowardsDegrees * Math.PI / 180);
        // The plane's axes: the one towards the slant leans away from the camera, the other stays.
        (double X, double Y, double Z) lean = (tx * cos, ty * cos, sin);
        (double X, double Y, double Z) level = (-ty, tx, 0);
        _across = (tx * lean.X - ty * level.X, tx * lean.Y - ty * level.Y, tx * lean.Z);
        _along = (ty * lean.X + tx * level.X, ty * lean.Y + tx * level.Y, ty * lean.Z);
        _normal = (-tx * sin, -ty * sin, cos);
        (_sin, _cos) = Math.SinCos(swatch.TurnDegrees * Math.PI / 180);
    }

    /// <summary>Place on the cloth, millimetres from its middle, seen by a pixel; x along the weft, y along the warp.</summary>
    public (double X, double Y) OnCloth(double px, double py)
    {
        double dx = (px - _swatch.Side / 2.0) / _focal;
        double dy = (_swatch.Side / 2.0 - py) / _focal;
        double t = _swatch.DistanceMillimetres * _normal.Z / (dx * _normal.X + dy * _normal.Y + _normal.Z);
        (double X, double Y, double Z) p = (t * dx, t * dy, t - _swatch.DistanceMillimetres);
        double u = p.X * _across.X + p.Y * _across.Y + p.Z * _across.Z;
        double v = p.X * _along.X + p.Y * _along.Y + p.Z * _along.Z;
        return (_cos * u + _sin * v, _cos * v - _sin * u);
    }

    /// <summary>The pixel that sees a place on the cloth.</summary>
    public (double X, double Y) OnPicture(double xMillimetres, double yMillimetres)
    {
        double u = _cos * xMillimetres - _sin * yMillimetres;
        double v = _sin * xMillimetres + _cos * yMillimetres;
        double z = _swatch.DistanceMillimetres + u * _across.Z + v * _along.Z;
        return (
            _swatch.Side / 2.0 + _focal * (u * _across.X + v * _along.X) / z,
            _swatch.Side / 2.0 - _focal * (u * _across.Y + v * _along.Y) / z);
    }
}
