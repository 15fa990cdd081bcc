using Clothwright.Core.Colours;

namespace Clothwright.Core.Photographs.Pictures;

/// <summary>A square of cloth seen square on: the logarithm of its light and of its hue, sample by sample.</summary>
/// <remarks>In logarithms a shadow takes the same amount from a dark thread and from a pale one, and uneven light is a slow slope.</remarks>
internal sealed class ClothView
{
    // Keeps the logarithm of black finite: about one code of eight bits.
    private const double Floor = 0.0006;

    private readonly double _step;
    private readonly ClothPoint _corner;

    public ClothView(Photograph photograph, PlaneMapping mapping, ClothPoint middle, double millimetresPerSample, int side)
    {
        Side = side;
        MillimetresPerSample = millimetresPerSample;
        _step = millimetresPerSample;
        _corner = new ClothPoint(middle.XMillimetres - _step * (side - 1) / 2, middle.YMillimetres - _step * (side - 1) / 2);
        LogLight = new double[side * side];
        Hue = new double[side * side];
        double pixels = _step * mapping.PixelsPerMillimetreAt(mapping.ToPhoto(middle));
        for (int y = 0, i = 0; y < side; y++)
        {
            for (int x = 0; x < side; x++, i++)
            {
                PhotoPoint place = mapping.ToPhoto(new ClothPoint(_corner.XMillimetres + x * _step, _corner.YMillimetres + y * _step));
                LinearColour light = photograph.LightAt(place, pixels);
                LogLight[i] = Math.Log(Luminance(light) + Floor);
                Hue[i] = Math.Log((light.Red + 4 * Floor) / (light.Blue + 4 * Floor));
            }
        }
    }

    public int Side { get; }

    public double MillimetresPerSample { get; }

    public double[] LogLight { get; }

    public double[] Hue { get; }

    // Luminance of linear sRGB, as in the row of Y of IEC 61966-2-1.
    public static double Luminance(LinearColour light) => 0.2126390 * light.Red + 0.7151687 * light.Green + 0.0721923 * light.Blue;
}
