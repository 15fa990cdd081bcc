using System.Collections.Immutable;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Plans.WeftChoice;
using Clothwright.Core.Tests.Yarns;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Plans.WeftChoice;

public class WeftChooserTests
{
    private static readonly Yarn Rust = EstuaryYarns.Make("rust", "8/2", CountSystem.Cotton, "cotton") with { Colour = new SrgbColour(0x96, 0x3a, 0x26) };
    private static readonly Yarn Silt = EstuaryYarns.Make("silt", "8/2", CountSystem.Cotton, "cotton") with { Colour = new SrgbColour(0xe6, 0xe0, 0xd2) };
    private static readonly PlanResult Plan = WarpPlanner.Plan(EstuaryWarps.OneScarf with { Shelf = [EstuaryWarps.Foam with { Colour = new SrgbColour(0xe9, 0xe4, 0xd8) }, Silt, Rust] }).Value;

    [Fact]
    public void The_clearest_pattern_over_a_pale_warp_comes_of_the_weft_that_differs_most() =>
        Assert.Equal("rust", WeftChooser.Propose(Plan, 0, new WeftAim(WeftAimKind.Clear, null))[0].Yarns[0].Id);

    [Theory]
    [InlineData(WeftAimKind.Clear, false)]
    [InlineData(WeftAimKind.Shimmer, true)]
    public void Wefts_looked_at_one_by_one_and_ranked_are_those_proposed_at_once(WeftAimKind kind, bool pairs)
    {
        var aim = new WeftAim(kind, null);
        WeftProposal?[] each = [.. WeftChooser.Each(Plan, 0, aim, pairs)];
        Assert.Equal(WeftChooser.Count(Plan, pairs), each.Length);
        Assert.Equal(
            WeftChooser.Propose(Plan, 0, aim, 4, pairs).Select(Names),
            WeftChooser.Ranked(each.OfType<WeftProposal>(), aim, 4).Select(Names));
    }

    [Fact]
    public void A_piece_that_is_not_there_is_a_slip_before_anything_is_looked_at() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WeftChooser.Each(Plan, 1, new WeftAim(WeftAimKind.Clear, null)));

    // Murray-Davies: the face is the area-weighted mean of the light of its parts (W. Murray, J. Franklin Institute 221, 1936).
    [Fact]
    public void The_weft_that_a_wanted_face_asks_for_gives_that_face()
    {
        PiecePlan piece = Plan.Pieces[0];
        FusedFace now = piece.Cloth.Washed.FusedColours().Face;
        double warp = now.Shares.Warp / (now.Shares.Warp + now.Shares.Weft);
        SrgbColour wanted = (now.Warp * warp + LinearColour.From(new SrgbColour(0x80, 0x60, 0x50)) * (1 - warp)).ToSrgb();
        var weft = WantedWeft.For(piece, wanted);
        LinearColour face = now.Warp * warp + weft.Light * (1 - warp);
        Assert.True(weft.IsReachable);
        Assert.Equal(wanted, face.ToSrgb());
    }

    [Fact]
    public void No_weft_turns_a_pale_warp_black() => Assert.False(WantedWeft.For(Plan.Pieces[0], new SrgbColour(0, 0, 0)).IsReachable);

    private static string Names(WeftProposal proposal) => string.Join('+', proposal.Yarns.Select(y => y.Id));
}
