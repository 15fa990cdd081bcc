namespace Clothwright.Core.Cloths.Geometry;

/// <summary>Warp and weft crossing in any weave: crimp at the crossings, floats straight and side by side.</summary>
/// <remarks>
/// Behera &amp; Hari and Love, from memory: crossing pitch pt = max(p, √(h(2D − h))), warp crimp = (l − pt2) ÷ (M2 p2). Plain weave
/// is Peirce's cloth. Lengths in one unit, whichever it is.
/// </remarks>
/// <param name="Warp">Section of the warp.</param>
/// <param name="Weft">Section of the weft.</param>
/// <param name="EndSpacing">Spacing of the ends.</param>
/// <param name="PickSpacing">Spacing of the picks.</param>
/// <param name="EndFloat">M1, which governs the ends.</param>
/// <param name="PickFloat">M2, which governs the picks.</param>
public readonly record struct WeaveGeometry(
    ThreadSection Warp, ThreadSection Weft, double EndSpacing, double PickSpacing, double EndFloat, double PickFloat)
{
    /// <summary>D: heights of both systems together.</summary>
    public double Sum => Warp.Height + Weft.Height;

    /// <summary>The greatest crimp height the picks leave room for in the warp.</summary>
    public double GreatestWarpHeight => PeirceGeometry.GreatestHeight(Room(PickSpacing, Weft, PickFloat), Sum);

    /// <summary>The greatest crimp height the ends leave room for in the weft.</summary>
    public double GreatestWeftHeight => PeirceGeometry.GreatestHeight(Room(EndSpacing, Warp, EndFloat), Sum);

    /// <summary>Whether the threads lie closer than they can: heights do not add up to D whichever way the crimp is shared.</summary>
    public bool IsJammed => GreatestWarpHeight + GreatestWeftHeight < Sum * (1 - 1e-9);

    /// <summary>Crimp height of the warp nearest to a wanted one that the room on both sides allows.</summary>
    /// <param name="share">Wanted height as a share of D, 0 to 1.</param>
    public double WarpHeight(double share)
    {
        double most = GreatestWarpHeight;
        double least = Sum - GreatestWeftHeight;
        if (least > most) return most == 0 && least >= Sum ? share * Sum : Sum * most / (most + GreatestWeftHeight);
        return Math.Clamp(share * Sum, Math.Max(0, least), Math.Min(Sum, most));
    }

    /// <summary>Warp crimp at a crimp height of the warp.</summary>
    /// <param name="height">Crimp height of the warp, 0 to D.</param>
    public double WarpCrimp(double height) => Crimp(height, PickSpacing, Weft, PickFloat);

    /// <summary>Weft crimp at a crimp height of the weft.</summary>
    /// <param name="height">Crimp height of the weft, 0 to D.</param>
    public double WeftCrimp(double height) => Crimp(height, EndSpacing, Warp, EndFloat);

    /// <summary>Thickness of the cloth at a crimp height of the warp: the system that stands out further sets it.</summary>
    /// <param name="warpHeight">Crimp height of the warp, 0 to D.</param>
    public double Thickness(double warpHeight) =>
        Math.Max(Sum, Math.Max(Warp.Height + warpHeight, Weft.Height + Sum - warpHeight));

    /// <summary>Crimp height of the warp at which both systems crimp alike.</summary>
    public double HeightOfEqualCrimp()
    {
        WeaveGeometry cloth = this;
        return WarpHeight(PeirceGeometry.Root(0, 1, s => cloth.WarpCrimp(cloth.WarpHeight(s)) >= cloth.WeftCrimp(cloth.Sum - cloth.WarpHeight(s))));
    }

    /// <summary>Crimp height of the warp at which its crimp is a measured one.</summary>
    /// <param name="crimp">Measured warp crimp as a fraction, 0 or more.</param>
    public double HeightOfWarpCrimp(double crimp)
    {
        WeaveGeometry cloth = this;
        return Sum * PeirceGeometry.Root(0, 1, s => cloth.WarpCrimp(s * cloth.Sum) >= crimp);
    }

    /// <summary>Crimp height of the warp when both systems press on each other alike: h1 ÷ h2 = (B2 ÷ B1) (M2 p2 ÷ M1 p1)³.</summary>
    /// <remarks>Equal crossing forces on beams of span M p (Olofsson; Leaf &amp; Kandil, from memory).</remarks>
    /// <param name="weftOverWarpStiffness">Bending rigidity of the weft ÷ that of the warp.</param>
    public double HeightOfBendingBalance(double weftOverWarpStiffness)
    {
        double span = PickFloat * PickSpacing / (EndFloat * EndSpacing);
        double ratio = weftOverWarpStiffness * span * span * span;
        return WarpHeight(ratio / (1 + ratio));
    }

    private double Crimp(double height, double spacing, ThreadSection between, double meanFloat)
    {
        double pitch = Math.Max(Math.Max(0, spacing - between.Excess), PeirceGeometry.ShortestPitch(Sum, height));
        return (PeirceGeometry.ModularLength(pitch, Sum, height) - pitch) / (meanFloat * spacing);
    }

    // Crossing pitch that is left once the threads of a float touch.
    private static double Room(double spacing, ThreadSection thread, double meanFloat) =>
        Math.Max(0, meanFloat * (spacing - thread.Width) + thread.Height);
}
