using System.Numerics;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Tests.Cloths.Look;

public class SymmetryTests
{
    private const int Size = 48;

    // Threads without unevenness, so that one differs from another by its weave alone.
    private static readonly Lustre Silk = Lustres.SilkReeled with { Slub = 0 };
    private static readonly Drawdown Broken = PaintedCloth.Weave("1101/0110/0011/1000");
    private static readonly Lighting Aslant = new(Direction.Unit(0.3, -0.5, 0.8), Direction.Unit(0.1, 0.2, 0.9));

    [Fact]
    public void A_mirrored_cloth_under_a_mirrored_lamp_gives_the_mirrored_picture_and_Z_twist_becomes_S()
    {
        LookDescription cloth = Cloth(Broken, 0.3);
        LookDescription mirrored = Cloth(Broken.EndsReversed(), -0.3);
        var lighting = new Lighting(Mirror(Aslant.Lamp), Mirror(Aslant.Eye));
        Vector3[,] one = PaintedCloth.Paint(cloth, 6, Size, Size, Aslant, usual: Aslant);
        Vector3[,] other = PaintedCloth.Paint(mirrored, 6, Size, Size, lighting, usual: lighting);
        AssertAlike(one, (x, y) => other[y, Size - 1 - x]);

        static Direction Mirror(Direction d) => d with { X = -d.X };
    }

    [Fact]
    public void Warp_and_weft_exchanged_under_an_exchanged_lamp_give_the_picture_turned_over_its_diagonal()
    {
        LookDescription cloth = Cloth(Broken, 0.3);
        LookDescription exchanged = Cloth(Broken.Transposed().Complement(), -0.3) with { Ends = [.. cloth.Picks.Select(Untwist)], Picks = [.. cloth.Ends.Select(Untwist)] };
        var lighting = new Lighting(Exchange(Aslant.Lamp), Exchange(Aslant.Eye));
        Vector3[,] one = PaintedCloth.Paint(cloth, 6, Size, Size, Aslant, usual: Aslant);
        Vector3[,] other = PaintedCloth.Paint(exchanged, 6, Size, Size, lighting, usual: lighting);
        AssertAlike(one, (x, y) => other[x, y]);

        static ThreadLook Untwist(ThreadLook thread) => thread with { TwistRadians = -thread.TwistRadians };
        static Direction Exchange(Direction d) => new(d.Y, d.X, d.Z);
    }

    [Fact]
    public void S_and_Z_twist_look_different_under_a_lamp_from_one_side()
    {
        Vector3[,] z = PaintedCloth.Paint(Cloth(Broken, 0.4), 6, Size, Size, Aslant, usual: Aslant);
        Vector3[,] s = PaintedCloth.Paint(Cloth(Broken, -0.4), 6, Size, Size, Aslant, usual: Aslant);
        Assert.True(Vector3.Distance(z[5, 5], s[5, 5]) + Vector3.Distance(z[17, 29], s[17, 29]) > 0.01);
    }

    [Fact]
    public void The_back_is_the_face_of_the_cloth_turned_over()
    {
        LookDescription cloth = Cloth(Broken, 0.3) with { Width = Clothwright.Core.Quantities.Length.FromMillimetres(8) };
        LookDescription over = cloth with { Weave = Broken.OtherFace() };
        Vector3[,] back = PaintedCloth.Paint(cloth, 6, Size, Size, Aslant, Face.Back, Aslant);
        Vector3[,] face = PaintedCloth.Paint(over, 6, Size, Size, Aslant, usual: Aslant);
        AssertAlike(back, (x, y) => face[y, x]);
    }

    // The light of points computed in another order differs by rounding; a point on the very edge of a thread may fall to either side.
    private static void AssertAlike(Vector3[,] one, Func<int, int, Vector3> other)
    {
        int apart = 0;
        for (int y = 0; y < Size; y++)
        {
            for (int x = 0; x < Size; x++)
            {
                if (Vector3.Distance(one[y, x], other(x, y)) > 0.002) apart++;
            }
        }

        Assert.True(apart <= Size * Size / 200, $"{apart} of {Size * Size} points differ.");
    }

    private static LookDescription Cloth(Drawdown weave, double twist) => PaintedCloth.Of(weave, Silk, Silk, 0.83, twist);
}
