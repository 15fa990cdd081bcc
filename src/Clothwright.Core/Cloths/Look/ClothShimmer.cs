using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Sections;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Look;

/// <summary>How much the colour of a face moves as the light turns: warp and weft of unlike colours or lustre come forward in turn.</summary>
public static class ClothShimmer
{
    // Light that comes from everywhere, and light that comes from the lamp.
    private const double Even = 0.35;
    private const double Lamp = 0.65;
    private const int Steps = 12;

    private static readonly Source Sadeghi = Source.Published("Sadeghi, Bisker, De Deken and Jensen, A practical microcylinder appearance model for cloth rendering, 2013");

    private static readonly double[] Slopes = [Math.PI / 4, Math.PI / 3];

    /// <summary>Largest difference of the face's colours under lamps 45° and 60° off the face, along the warp and along the weft.</summary>
    /// <param name="cloth">The cloth.</param>
    public static Derived<Number> Of(ClothGeometry cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        CieLab[] seen = [.. Lights().Select(light => CieLab.From(Under(cloth, light)))];
        double most = 0;
        for (int i = 0; i < seen.Length; i++)
        {
            for (int j = 0; j < i; j++) most = Math.Max(most, ColourDifference.Ciede2000(seen[i], seen[j]));
        }

        return Derived.Given(
            "shimmer",
            Number.FromValue(most),
            Sadeghi,
            0.3 * most,
            "how this yarn throws light back",
            "largest CIEDE2000 between the face's colours from afar under a lamp along the warp and along the weft, 45° and 60° off the face");
    }

    /// <summary>The face's colour from afar under one lamp, seen from straight above.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="light">Towards the lamp, 1 long.</param>
    public static LinearColour Under(ClothGeometry cloth, Direction light)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        double cells = (double)cloth.Counts.Ends * cloth.Counts.Picks;
        Func<int, LinearColour> warp = Lit(cloth.Question.Warp, ThreadDirection.Warp, light, Math.Min(1, cloth.Counts.WarpTransitions / cells), Slope(cloth.WarpCrimp, 1 / cloth.Question.Picks.Value.PerMetre));
        Func<int, LinearColour> weft = Lit(cloth.Question.Weft, ThreadDirection.Weft, light, Math.Min(1, cloth.Counts.WeftTransitions / cells), Slope(cloth.WeftCrimp, 1 / cloth.Question.Ends.Value.PerMetre));
        return FusedColours.Of(cloth.Question.Weave, warp, weft, cloth.WarpCover.Value.Value, cloth.WeftCover.Value.Value).Face.Colour;
    }

    private static IEnumerable<Direction> Lights() => Slopes.SelectMany(s => new[] { Direction.Unit(0, Math.Sin(s), Math.Cos(s)), Direction.Unit(Math.Sin(s), 0, Math.Cos(s)) });

    private static double Slope(Derived<Ratio> crimp, double pitchMetres) => CrimpWave.OfCrimp(Math.Max(0, crimp.Value.Value), pitchMetres).SteepestRadians;

    // Each yarn's colour in this light: flat on its floats, bent at its crossings, over the whole width of the thread.
    private static Func<int, LinearColour> Lit(Setts.ThreadSystem threads, ThreadDirection direction, Direction light, double bent, double slopeRadians)
    {
        LinearColour[] lit = [.. threads.Yarns.Select(yarn =>
        {
            ThreadLook look = ThreadLooks.Of(yarn);
            (double body, double gloss) = Mean(look, direction, light, bent, slopeRadians);
            LinearColour colour = LinearColour.From(yarn.Colour);
            double share = Even + Lamp * body / BodyReference.Of(look.Lustre);
            LinearColour shine = look.Lustre.IsMetal ? colour * (Lamp * gloss) : new LinearColour(1, 1, 1) * (Lamp * gloss);
            return colour * share + shine;
        })];
        return thread => lit[threads.Order[thread]];
    }

    private static (double Body, double Gloss) Mean(ThreadLook look, ThreadDirection direction, Direction light, double bent, double slopeRadians)
    {
        double body = 0;
        double gloss = 0;
        for (int i = 0; i < Steps; i++)
        {
            double along = 2 * (i + 0.5) / Steps - 1;
            for (int j = 0; j < Steps; j++)
            {
                double across = 2 * (j + 0.5) / Steps - 1;
                Add(along * slopeRadians, bent);
                Add(0, 1 - bent);

                void Add(double tilt, double weight)
                {
                    if (weight <= 0) return;
                    ThreadLight at = ThreadShading.At(look.Lustre, direction, light, Direction.OffTheFace, look.TwistRadians, tilt, across);
                    body += at.Body * weight;
                    gloss += at.Gloss * weight;
                }
            }
        }

        return (body / (Steps * Steps), gloss / (Steps * Steps));
    }
}
