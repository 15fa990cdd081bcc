using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.TestKit.Photographs;

namespace Clothwright.Core.Tests.Photographs;

public class PieceMeasureTests
{
    // A pale ground with a darker piece of known size on it; edges waver by a pixel, as selvedges do.
    private static Photograph Piece(int width, int height, double contrast)
    {
        var chance = new SeededChance(8);
        byte[] rgba = new byte[500 * 400 * 4];
        for (int y = 0; y < 400; y++)
        {
            double waver = 1.5 * Math.Sin(y / 9.0);
            for (int x = 0; x < 500; x++)
            {
                bool inside = Math.Abs(x + 0.5 - 250 - waver) < width / 2.0 && Math.Abs(y + 0.5 - 200) < height / 2.0;
                byte level = (byte)Math.Clamp(200 - (inside ? contrast : 0) + 4 * chance.Normal(), 0, 255);
                rgba.AsSpan((y * 500 + x) * 4, 4).Fill(level);
            }
        }

        return Photograph.FromRgba(500, 400, rgba);
    }

    [Fact]
    public void A_piece_is_measured_from_edge_to_edge()
    {
        PieceSize size = PieceMeasure.Measure(Piece(300, 240, 90), PhotoScale.FromLength(Length.FromMillimetres(100), 100), new PhotoPoint(260, 190)).Value;
        // A pixel at each edge.
        Assert.Equal(300, size.Width.Value.Millimetres, 2.0);
        Assert.Equal(240, size.Length.Value.Millimetres, 2.0);
        Assert.NotEqual(Certainty.CannotTell, size.Certainty);
    }

    [Fact]
    public void A_piece_as_pale_as_its_ground_has_no_edges()
    {
        Parsed<PieceSize> size = PieceMeasure.Measure(Piece(300, 240, 2), PhotoScale.FromLength(Length.FromMillimetres(100), 100), new PhotoPoint(250, 200));
        Assert.Contains("ground of another colour", size.Problem!.Mend, StringComparison.Ordinal);
    }
}
