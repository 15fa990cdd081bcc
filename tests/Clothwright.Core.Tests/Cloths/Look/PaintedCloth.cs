using System.Numerics;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Pictures;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Tests.Cloths.Look;

/// <summary>Cloths to paint, and means of what was painted.</summary>
internal static class PaintedCloth
{
    public static readonly SrgbColour Plum = new(0x5b, 0x2a, 0x86);
    public static readonly SrgbColour Rosehip = new(0xe8, 0x6a, 0x17);
    public static readonly LinearColour Paper = new(0.8, 0.78, 0.7);

    /// <summary>Ten threads a centimetre both ways.</summary>
    public static LookDescription Of(Drawdown weave, Lustre warp, Lustre weft, double widthMillimetres = 0.9, double twist = 0.3) => new(
        weave,
        [Thread(Plum, warp, widthMillimetres, twist)],
        [Thread(Rosehip, weft, widthMillimetres, twist)],
        Sett.FromPerCentimetre(10),
        Sett.FromPerCentimetre(10));

    public static ThreadLook Thread(SrgbColour colour, Lustre lustre, double widthMillimetres = 0.9, double twist = 0.3) => new(colour, Length.FromMillimetres(widthMillimetres))
    {
        Lustre = lustre,
        TwistRadians = twist,
        Height = Length.FromMillimetres(0.6),
    };

    public static Drawdown Weave(string rows) => Drawdown.Parse(rows).Value;

    /// <summary>Paints millimetres of cloth at so many pixels a millimetre; row 0 is the lowest.</summary>
    public static Vector3[,] Paint(LookDescription cloth, double perMillimetre, int width, int height, Lighting? lighting = null, Face face = Face.Front, Lighting? usual = null)
    {
        var view = new ClothView(face, 0, 0, 1 / perMillimetre, width, height, lighting ?? Lighting.Window, Paper) { Usual = usual ?? Lighting.Window };
        var painter = new ClothPainter(LookNumbers.Of(cloth), view);
        var picture = new Vector3[height, width];
        var row = new Vector3[width];
        for (int y = 0; y < height; y++)
        {
            painter.Row(y, row);
            for (int x = 0; x < width; x++) picture[y, x] = row[x];
        }

        return picture;
    }

    public static LinearColour Mean(Vector3[,] picture)
    {
        LinearColour sum = default;
        foreach (Vector3 light in picture) sum += new LinearColour(light.X, light.Y, light.Z);
        return sum * (1.0 / picture.Length);
    }

    public static double Difference(LinearColour one, LinearColour other) => ColourDifference.Cie76(Lab(one), Lab(other));

    public static CieLab Lab(LinearColour light) => CieLab.From(light);
}
