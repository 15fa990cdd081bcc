namespace Clothwright.Core.Colours;

/// <summary>How a colour looks to another kind of colour vision.</summary>
/// <remarks>
/// G. Machado, M. Oliveira and L. Fernandes, IEEE TVCG 15 (2009) 1291: matrices applied to linear light, then clipped.
/// Severities between the tabulated ones are interpolated linearly (largest error of a matrix entry .026, tritan .1).
/// </remarks>
public static class ColourVisionSimulation
{
    // One row a severity 0, 0.2 … 1; nine entries by rows of red, green, blue.
    private static readonly double[][] Protan =
    [
        [1, 0, 0, 0, 1, 0, 0, 0, 1],
        [0.734766, 0.334872, -0.069637, 0.051840, 0.919198, 0.028963, -0.004928, -0.004209, 1.009137],
        [0.539009, 0.579343, -0.118352, 0.082546, 0.866121, 0.051332, -0.007136, -0.011959, 1.019095],
        [0.385450, 0.769005, -0.154455, 0.100526, 0.829802, 0.069673, -0.007442, -0.022190, 1.029632],
        [0.259411, 0.923008, -0.182420, 0.110296, 0.804340, 0.085364, -0.006276, -0.034346, 1.040622],
        [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
    ];

    private static readonly double[][] Deutan =
    [
        [1, 0, 0, 0, 1, 0, 0, 0, 1],
        [0.760729, 0.319078, -0.079807, 0.090568, 0.889315, 0.020117, -0.006027, 0.013325, 0.992702],
        [0.605511, 0.528560, -0.134071, 0.155318, 0.812366, 0.032316, -0.009376, 0.023176, 0.986200],
        [0.498864, 0.674741, -0.173604, 0.205199, 0.754872, 0.039929, -0.011131, 0.030969, 0.980162],
        [0.422823, 0.781057, -0.203881, 0.245752, 0.709602, 0.044646, -0.011843, 0.037423, 0.974421],
        [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881],
    ];

    private static readonly double[][] Tritan =
    [
        [1, 0, 0, 0, 1, 0, 0, 0, 1],
        [0.895720, 0.133330, -0.029050, 0.029997, 0.945400, 0.024603, 0.013027, 0.104707, 0.882266],
        [0.948035, 0.089490, -0.037526, 0.014364, 0.946792, 0.038844, 0.010853, 0.193991, 0.795156],
        [1.104996, -0.046633, -0.058363, -0.032137, 0.971635, 0.060503, 0.001336, 0.317922, 0.680742],
        [1.257728, -0.139648, -0.118081, -0.078003, 0.975409, 0.102594, -0.003316, 0.501214, 0.502102],
        [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900],
    ];

    /// <summary>A colour as another eye sees it.</summary>
    /// <param name="colour">The colour.</param>
    /// <param name="vision">The kind of vision.</param>
    /// <param name="severity">0 (usual vision) to 1 (cones missing).</param>
    /// <exception cref="ArgumentOutOfRangeException">The severity is outside 0 to 1.</exception>
    public static SrgbColour Seen(SrgbColour colour, ColourVision vision, double severity)
    {
        if (severity is not (>= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(severity), severity, "A severity runs from 0 to 1.");
        }

        double[][] table = vision switch { ColourVision.Protan => Protan, ColourVision.Deutan => Deutan, _ => Tritan };
        double at = severity * (table.Length - 1);
        int below = Math.Min((int)at, table.Length - 2);
        double part = at - below;
        double Entry(int i) => table[below][i] * (1 - part) + table[below + 1][i] * part;

        LinearColour light = LinearColour.From(colour);
        return new LinearColour(
            Entry(0) * light.Red + Entry(1) * light.Green + Entry(2) * light.Blue,
            Entry(3) * light.Red + Entry(4) * light.Green + Entry(5) * light.Blue,
            Entry(6) * light.Red + Entry(7) * light.Green + Entry(8) * light.Blue).ToSrgb();
    }
}
