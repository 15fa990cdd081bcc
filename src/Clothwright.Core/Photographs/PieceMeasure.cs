using Clothwright.Core.Colours;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Photographs;

/// <summary>Measures a piece of cloth that lies whole in a photograph: the largest step of colour on scan lines to either side.</summary>
public static class PieceMeasure
{
    private const int Lines = 50;

    // The middle part of the piece: corners and fringes are left out.
    private const double Part = 0.6;
    private const int ReachSamples = 10;

    // Deviation of the lines, as a share of the size.
    private const double SureDeviation = 0.005;
    private const double HardlyDeviation = 0.03;

    // A step of colour, as a distance in OKLab, below which there is no edge to speak of.
    private const double LeastStep = 0.06;

    private static readonly Rule EdgeRule = new("edges in a photograph", $"middle of {Lines} scan lines, from edge to edge", Source.Derivation);

    /// <summary>Measures the piece around a place.</summary>
    /// <param name="photograph">The photograph; a ground of another colour shows all around the piece.</param>
    /// <param name="scale">How large things are, in the plane of the cloth.</param>
    /// <param name="inside">A place on the cloth, near its middle.</param>
    /// <returns>The size, or the problem: no edges are seen.</returns>
    public static Parsed<PieceSize> Measure(Photograph photograph, PhotoScale scale, PhotoPoint inside)
    {
        ArgumentNullException.ThrowIfNull(photograph);
        ArgumentNullException.ThrowIfNull(scale);
        ClothPoint seed = scale.Mapping.ToCloth(inside);
        double step = 1 / scale.Mapping.PixelsPerMillimetreAt(inside);
        var first = new Scan(photograph, scale.Mapping, step);
        if (first.Edges(seed, across: true) is not { } width || first.Edges(seed, across: false) is not { } height)
        {
            return new InputProblem("No edges of the cloth are seen to all four sides.", "photograph", "Lay the piece flat on a ground of another colour, with some ground around it, and give a place near its middle.");
        }

        var middle = new ClothPoint((width.Low + width.High) / 2, (height.Low + height.High) / 2);
        (double wide, double wideDeviation, int wideSeen) = Sizes(first, middle, height.High - height.Low, across: true);
        (double tall, double tallDeviation, int tallSeen) = Sizes(first, middle, width.High - width.Low, across: false);
        double worst = Math.Max(wideDeviation / wide, tallDeviation / tall);
        int seen = Math.Min(wideSeen, tallSeen);
        Certainty certainty = worst > HardlyDeviation || seen < Lines / 2 ? Certainty.CannotTell
            : worst <= SureDeviation && seen >= Lines * 0.9 && scale.KnowsPlane ? Certainty.Sure : Certainty.FairlySure;
        return new PieceSize(Given("width of the piece", wide, wideDeviation, scale), Given("length of the piece", tall, tallDeviation, scale), certainty);
    }

    private static Derived<Length> Given(string label, double millimetres, double deviation, PhotoScale scale)
    {
        Length length = Length.FromMillimetres(millimetres);
        Derived<Length> edges = Derived.Given("edge to edge", length, new Source(SourceKind.Measured, "seen in the photograph"), deviation / 1000 / Math.Sqrt(Lines));
        Derived<Ratio> marks = Derived.Given("scale of the photograph, as marked", Ratio.FromValue(1), new Source(SourceKind.Measured, "marks on the photograph"), scale.RelativeDeviation, "scale of the photograph");
        return Derived.From<Length>(label, EdgeRule, edges, marks, (metres, share) => metres * share);
    }

    private static (double Size, double Deviation, int Seen) Sizes(Scan scan, ClothPoint middle, double other, bool across)
    {
        var sizes = new List<double>();
        for (int i = 0; i < Lines; i++)
        {
            double off = ((i + 0.5) / Lines - 0.5) * Part * other;
            ClothPoint at = across ? middle with { YMillimetres = middle.YMillimetres + off } : middle with { XMillimetres = middle.XMillimetres + off };
            if (scan.Edges(at, across) is { } edges) sizes.Add(edges.High - edges.Low);
        }

        if (sizes.Count == 0) return (other, other, 0);
        sizes.Sort();
        double median = sizes[sizes.Count / 2];
        double[] off2 = [.. sizes.Select(s => Math.Abs(s - median)).Order()];
        // The median of deviations is 0.6745 of a normal standard deviation.
        return (median, off2[off2.Length / 2] / 0.6745, sizes.Count);
    }

    // One line across the picture through a place, and the largest step of colour to either side of it.
    private sealed class Scan(Photograph photograph, PlaneMapping mapping, double stepMillimetres)
    {
        public (double Low, double High)? Edges(ClothPoint place, bool across)
        {
            double start = across ? place.XMillimetres : place.YMillimetres;
            return Edge(place, across, -1) is { } low && Edge(place, across, 1) is { } high ? (start - low, start + high) : null;
        }

        private double? Edge(ClothPoint place, bool across, int direction)
        {
            var colours = new List<OkLab>();
            for (int i = 0; ; i++)
            {
                double off = i * stepMillimetres * direction;
                PhotoPoint seen = mapping.ToPhoto(across ? place with { XMillimetres = place.XMillimetres + off } : place with { YMillimetres = place.YMillimetres + off });
                if (seen.X < 1 || seen.Y < 1 || seen.X > photograph.Width - 1 || seen.Y > photograph.Height - 1) break;
                colours.Add(OkLab.From(photograph.LightAt(seen, 3)));
            }

            (double best, int at) = (0, -1);
            for (int i = 2 * ReachSamples; i < colours.Count - ReachSamples; i++)
            {
                double found = Distance(Mean(colours, i - ReachSamples, i), Mean(colours, i, i + ReachSamples));
                if (found > best) (best, at) = (found, i);
            }

            return best >= LeastStep ? (at - 0.5) * stepMillimetres : null;
        }

        private static (double L, double A, double B) Mean(List<OkLab> colours, int first, int end)
        {
            (double l, double a, double b) = (0, 0, 0);
            for (int i = first; i < end; i++) (l, a, b) = (l + colours[i].L, a + colours[i].A, b + colours[i].B);
            return (l / (end - first), a / (end - first), b / (end - first));
        }

        private static double Distance((double L, double A, double B) x, (double L, double A, double B) y) =>
            Math.Sqrt((x.L - y.L) * (x.L - y.L) + (x.A - y.A) * (x.A - y.A) + (x.B - y.B) * (x.B - y.B));
    }
}
