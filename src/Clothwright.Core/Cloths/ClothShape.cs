using Clothwright.Core.Cloths.Geometry;

namespace Clothwright.Core.Cloths;

/// <summary>What stays fixed while diameters and setts vary: floats and flattening.</summary>
internal readonly record struct ClothShape(double EndFloat, double PickFloat, double WarpFlattening, double WeftFlattening)
{
    /// <summary>The geometry for diameters in metres and threads per metre.</summary>
    internal WeaveGeometry At(double warp, double weft, double ends, double picks) => new(
        ThreadSection.FromFlattening(warp, WarpFlattening),
        ThreadSection.FromFlattening(weft, WeftFlattening),
        1 / ends,
        1 / picks,
        EndFloat,
        PickFloat);

    /// <summary>The geometry and the warp's crimp height, from warp, weft, ends, picks and the warp's share.</summary>
    internal (WeaveGeometry Cloth, double Height) At(double[] values)
    {
        WeaveGeometry cloth = At(values[0], values[1], values[2], values[3]);
        return (cloth, cloth.WarpHeight(values[4]));
    }
}
