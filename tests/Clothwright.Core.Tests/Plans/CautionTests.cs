using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Tests.Yarns;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Plans;

public class CautionTests
{
    private static readonly Piece Scarf = EstuaryWarps.Scarf;

    private static readonly Yarn Mist = EstuaryYarns.Make("mist", "120/2", CountSystem.Metric, "silk-reeled");

    private static readonly Dictionary<string, (Piece Piece, string[] Cautions)> Cases = new()
    {
        ["a grown person's scarf"] = (Scarf, []),
        ["a child's scarf"] = (Scarf with { Wearer = Wearer.Child }, ["child-neck", "child-certificate"]),
        ["a child's fringed blanket"] = (Scarf with { Wearer = Wearer.Child, Kind = PieceKind.Blanket }, ["child-neck", "child-certificate"]),
        ["a child's plain towel"] = (Plain(PieceKind.Towel, Wearer.Child), ["child-certificate"]),
        ["a child's hood with ties"] = (Plain(PieceKind.GarmentPanel, Wearer.Child) with { Ties = true }, ["child-cords", "child-certificate"]),
        ["a child's nightshirt"] = (Plain(PieceKind.GarmentPanel, Wearer.Child) with { Nightwear = true }, ["child-nightwear", "child-certificate"]),
        ["a baby's blanket"] = (Plain(PieceKind.Blanket, Wearer.Baby), ["baby-sleep", "baby-threads", "child-certificate"]),
        ["a brushed shawl"] = (Scarf with { Raised = true }, ["flammable-raised"]),
        ["a fulled scarf"] = (Scarf with { Fulled = true }, ["hot-water"]),
        ["a brushed blanket for the house"] = (Plain(PieceKind.Blanket, Wearer.Household) with { Raised = true }, []),
    };

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Whoever_could_be_hurt_is_warned(string name)
    {
        (Piece piece, string[] expected) = Cases[name];
        Assert.Equal([.. expected, "strain"], EstuaryWarps.OneScarf.With(piece).Planned().Cautions.Select(c => c.Id).Order(StringComparer.Ordinal).OrderBy(id => Array.IndexOf([.. expected, "strain"], id)));
    }

    [Fact]
    public void A_light_sheer_silk_scarf_may_burn_too_fast()
    {
        PlanResult plan = (EstuaryWarps.OneScarf with
        {
            Shelf = [Mist],
            Warp = WarpOrder.Of("mist"),
            Weave = EstuaryWarps.Weave("plain"),
            ChosenSett = Sett.FromPerInch(20),
            Purpose = ClothPurpose.Airy,
            Pieces = [Scarf with { Weft = [new WeftRun("mist", 1)], ChosenPicks = Sett.FromPerInch(20) }],
        }).Planned();
        Assert.True(plan.MassPerArea.Value.GramsPerSquareMetre < 88.15);
        Assert.Contains(plan.Cautions, c => c.Id == "flammable-light");
        Assert.Contains(plan.Cautions, c => c.Id == "flammable-sheer");
    }

    [Fact]
    public void Metallic_thread_undoes_the_exemption_of_wool()
    {
        Yarn glint = EstuaryYarns.Make("glint", "17 tex", CountSystem.Tex, "metallised film", YarnConstruction.Monofilament);
        PlanResult plan = (EstuaryWarps.OneScarf with
        {
            Shelf = [EstuaryYarns.Merino, glint],
            Warp = WarpOrder.Of("samphire"),
            Pieces = [Scarf with { Weft = [new WeftRun("samphire", 3), new WeftRun("glint", 1)] }],
        }).Planned();
        Assert.Contains(plan.Cautions, c => c.Id == "flammable-metallic");
    }

    [Fact]
    public void One_caution_for_several_pieces_is_said_once()
    {
        PlanResult plan = (EstuaryWarps.OneScarf with { Pieces = [Scarf with { Wearer = Wearer.Child }, Scarf with { Wearer = Wearer.Child }] }).Planned();
        Assert.Null(Assert.Single(plan.Cautions, c => c.Id == "child-neck").PieceIndex);
    }

    [Fact]
    public void A_heavy_blanket_is_heavier_wet()
    {
        PlanResult plan = EstuaryWarps.OneScarf.With(Plain(PieceKind.Blanket, Wearer.Household) with { Width = Length.FromCentimetres(50), Length = Length.FromMetres(2.5), Count = 8 }).Planned();
        Assert.Contains(plan.Cautions, c => c.Id == "wet-weight");
    }

    private static Piece Plain(PieceKind kind, Wearer wearer) =>
        Scarf with { Kind = kind, Wearer = wearer, Fringe = FringeStyle.None, Hem = Length.FromCentimetres(2) };
}
