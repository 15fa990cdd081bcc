using System.Numerics;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Places;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Tests.Cloths.Look;

public class ThreadsSeenTests
{
    private static readonly Lustre Still = Lustres.Cotton with { Slub = 0, Fuzz = 0 };

    // The double cloth of two layers shows the threads of the upper one only, face and back alike.
    [Theory]
    [InlineData(Face.Front, 0)]
    [InlineData(Face.Back, 1)]
    public void Of_two_layers_the_upper_one_is_seen(Face face, int layer)
    {
        Weave weave = SeparateLayers.Of(2);
        LookDescription cloth = PaintedCloth.Of(weave.Draft.Drawdown(), Still, Still) with { SharedEnds = [false, true], SharedPicks = [false, true] };
        FaceCells cells = FaceCells.Of(cloth, face);
        Assert.Equal((2, 2), (cells.Columns, cells.Rows));
        for (int row = 0; row < 2; row++)
        {
            for (int column = 0; column < 2; column++)
            {
                Assert.Equal(layer, (cells[column, row] >> 1) & 3);
                Assert.Equal(layer, (cells[column, row] >> 3) & 3);
            }
        }

        // Each layer by itself is plain.
        Assert.NotEqual(cells[0, 0] & 1, cells[1, 0] & 1);
        Assert.NotEqual(cells[0, 0] & 1, cells[0, 1] & 1);
    }

    [Fact]
    public void A_pattern_weft_hides_its_ground_where_it_floats_and_is_hidden_where_it_does_not()
    {
        // Plain ground picks with a pattern pick after each, floating over ends 1 to 3 and under 4 to 6.
        LookDescription cloth = PaintedCloth.Of(PaintedCloth.Weave("101010/000111/010101/000111"), Still, Still) with { SharedPicks = [false, true] };
        FaceCells cells = FaceCells.Of(cloth, Face.Front);
        Assert.Equal([1, 1, 1, 0, 0, 0], Enumerable.Range(0, 6).Select(c => (cells[c, 0] >> 3) & 3));
        Assert.Equal([0, 0, 0, 0, 1, 0], Enumerable.Range(0, 6).Select(c => cells[c, 0] & 1));
    }

    [Fact]
    public void A_clasped_weft_changes_colour_where_it_is_clasped()
    {
        ThreadLook left = PaintedCloth.Thread(PaintedCloth.Plum, Still, 1.2);
        LookDescription cloth = Weft(left with { ClaspedWith = PaintedCloth.Thread(PaintedCloth.Rosehip, Still, 1.2), ClaspShare = 0.25 });
        Vector3[,] picture = PaintedCloth.Paint(cloth, 2, 80, 8);
        Assert.True(picture[3, 10].X < picture[3, 10].Z, "Plum at the left.");
        Assert.True(picture[3, 30].X > 2 * picture[3, 30].Z, "Rosehip from a quarter on.");
    }

    [Fact]
    public void A_variegated_weft_shows_its_colours_for_as_long_as_they_last_and_runs_back_on_the_next_pick()
    {
        ThreadLook yarn = PaintedCloth.Thread(PaintedCloth.Plum, Still, 1.2) with
        {
            Stretches = [new ColourStretch(PaintedCloth.Plum, Length.FromMillimetres(40)), new ColourStretch(PaintedCloth.Rosehip, Length.FromMillimetres(40))],
        };
        Vector3[,] picture = PaintedCloth.Paint(Weft(yarn), 2, 80, 8);

        // Pick 1 lies on the first 40 mm, all plum; pick 2 on the next 40 mm, all rosehip.
        Assert.All([10, 40, 70], x => Assert.True(picture[1, x].Z > picture[1, x].X));
        Assert.All([10, 40, 70], x => Assert.True(picture[3, x].X > 2 * picture[3, x].Z));
    }

    [Fact]
    public void A_gap_shows_what_lies_behind_in_the_shade_and_beyond_the_edge_in_full_light()
    {
        LookDescription cloth = PaintedCloth.Of(PaintedCloth.Weave("10/01"), Still, Still, 0.4) with { Width = Length.FromMillimetres(2) };
        Vector3[,] picture = PaintedCloth.Paint(cloth, 10, 40, 20);
        Assert.Equal(0.62 * PaintedCloth.Paper.Red, picture[10, 10].X, 0.01);
        Assert.Equal(PaintedCloth.Paper.Red, picture[10, 35].X, 0.0001);
    }

    [Fact]
    public void A_thick_weft_takes_a_wider_share_of_the_length()
    {
        ThreadPlaces places = ThreadPlaces.Lay(
            [PaintedCloth.Thread(PaintedCloth.Plum, Still, 1.5), PaintedCloth.Thread(PaintedCloth.Rosehip, Still, 0.5)], [], Sett.FromPerCentimetre(10), 4);
        Assert.Equal(4, places.Count);
        Assert.Equal([0, 1.5, 2, 3.5, 4], places.Edges.Select(e => Math.Round(e, 9)));
    }

    [Fact]
    public void Threads_that_share_a_place_take_no_room_of_their_own()
    {
        ThreadPlaces places = ThreadPlaces.Lay([PaintedCloth.Thread(PaintedCloth.Plum, Still)], [false, true], Sett.FromPerCentimetre(20), 4);
        Assert.Equal([0, 1, 2, 3, 4], places.Edges.Select(e => Math.Round(e, 9)));
        Assert.Equal([0, 2, 4, 6], places.FirstThreads);
    }

    // A weft-faced cloth 40 mm wide, one warp thread far below.
    private static LookDescription Weft(ThreadLook pick) => new(
        PaintedCloth.Weave("0"), [PaintedCloth.Thread(new SrgbColour(0, 0, 0), Still)], [pick], Sett.FromPerCentimetre(10), Sett.FromPerCentimetre(10))
    {
        Width = Length.FromMillimetres(40),
        Length = Length.FromMillimetres(40),
    };
}
