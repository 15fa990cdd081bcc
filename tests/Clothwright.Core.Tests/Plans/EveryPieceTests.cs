using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Tests.Plans;

public class EveryPieceTests
{
    // Everything but the chain is given: take-up 10 %, draw-in 8 %, shrinkage 6 % in length and 5 % in width, 5 cm of header, 60 cm of
    // waste. By hand: warp = 5 + (length + 2 hems + 2 seams) ÷ 0.94 ÷ 0.90 + fringes + 60 with, for one end, a twisted fringe of
    // length ÷ 0.85 + 3 (middle of 10 to 20 % shortening and 2 to 4 cm of knot), a knotted one of length + 3, a loose one of length + 1;
    // reed = (width + 2 side seams) ÷ 0.95 ÷ 0.92, of double width half the width.
    private static readonly Allowances Known = new()
    {
        WarpTakeUp = Ratio.FromPercent(10),
        DrawIn = Ratio.FromPercent(8),
        ShrinkageInLength = Ratio.FromPercent(6),
        ShrinkageInWidth = Ratio.FromPercent(5),
        LoomWaste = Length.FromCentimetres(60),
    };

    [Theory]
    [InlineData(PieceKind.Scarf, PieceMake.Flat, RingJoin.None, 20, 180, 0, 0, 0, FringeStyle.Twisted, 12, 312.00, 22.88)]
    [InlineData(PieceKind.Shawl, PieceMake.Flat, RingJoin.None, 55, 180, 0, 0, 0, FringeStyle.Knotted, 14, 311.77, 62.93)]
    [InlineData(PieceKind.Cowl, PieceMake.Flat, RingJoin.Plain, 24, 70, 0, 1.5, 0, FringeStyle.None, 0, 151.29, 27.46)]
    [InlineData(PieceKind.Cowl, PieceMake.Flat, RingJoin.HalfTwist, 24, 120, 0, 1.5, 0, FringeStyle.None, 0, 210.39, 27.46)]
    [InlineData(PieceKind.Throw, PieceMake.Flat, RingJoin.None, 60, 150, 0, 0, 0, FringeStyle.Loose, 8, 260.30, 68.65)]
    [InlineData(PieceKind.Towel, PieceMake.Flat, RingJoin.None, 45, 60, 3, 0, 0, FringeStyle.None, 0, 143.01, 51.49)]
    [InlineData(PieceKind.Blanket, PieceMake.DoubleWidth, RingJoin.None, 80, 120, 0, 0, 0, FringeStyle.Twisted, 8, 231.67, 45.77)]
    [InlineData(PieceKind.Bag, PieceMake.Tube, RingJoin.None, 30, 35, 2, 1.5, 0, FringeStyle.None, 0, 114.65, 34.32)]
    [InlineData(PieceKind.GarmentPanel, PieceMake.Flat, RingJoin.None, 50, 65, 0, 1.5, 1.5, FringeStyle.None, 0, 145.38, 60.64)]
    [InlineData(PieceKind.Yardage, PieceMake.Flat, RingJoin.None, 50, 300, 0, 0, 0, FringeStyle.None, 0, 419.61, 57.21)]
    public void Warp_and_reed_follow_from_the_piece_by_hand(
        PieceKind kind, PieceMake make, RingJoin join, double width, double length, double hem, double endSeam, double sideSeam, FringeStyle fringe, double fringeLength, double warp, double reed)
    {
        Piece piece = EstuaryWarps.Scarf with
        {
            Name = kind.ToString(),
            Kind = kind,
            Make = make,
            Join = join,
            Width = Length.FromCentimetres(width),
            Length = Length.FromCentimetres(length),
            Hem = Length.FromCentimetres(hem),
            EndSeam = Length.FromCentimetres(endSeam),
            SideSeam = Length.FromCentimetres(sideSeam),
            Fringe = fringe,
            FringeLength = Length.FromCentimetres(fringeLength),
        };
        PlanResult plan = (EstuaryWarps.OneScarf with { Allowances = Known }).With(piece).Planned();
        PiecePlan made = plan.Pieces[0];

        Assert.Equal(warp, plan.WarpLength.Value.Centimetres, 0.006); // written to a tenth of a millimetre
        Assert.Equal(reed, made.WantedReedWidth.Value.Centimetres, 0.006);
        Assert.Equal(length, made.FinishedLength.Value.Centimetres, 1e-6);

        // 8/2 cotton twill in a 10-dent reed, so many to a dent as the plan says; each layer has its own ends.
        int layers = make == PieceMake.Flat ? 1 : 2;
        double perInch = plan.Reed!.Sley.MeanEndsPerDent * 10;
        Assert.Equal(perInch, plan.Sett.Value.PerInch, 1e-9);
        Assert.InRange(plan.Ends.Total.Value.Count, reed / 2.54 * perInch - 4 * layers, reed / 2.54 * perInch + 4 * layers);
        Assert.Equal(plan.Ends.Total.Value.Count * plan.WarpLength.Value.Metres, plan.Yarns[0].Warp.Value.Metres, 1e-6);
        Assert.Equal(0, made.Picks.Value.Count % layers);
    }
}
