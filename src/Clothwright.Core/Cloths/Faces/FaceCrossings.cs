using Clothwright.Core.Colours;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Cloths.Faces;

/// <summary>The crossings of a face by their colour: how many there are of each, and how often each lies beside each.</summary>
internal sealed class FaceCrossings
{
    // Largest stretch of cloth that is looked at; past it the shares no longer change visibly.
    private const int Most = 480;

    private readonly List<LinearColour> _colours = [];
    private readonly Dictionary<(int Warp, int Weft, bool WarpUp), int> _colourOf = [];
    private long[] _counts = [];
    private long[,] _across = new long[0, 0];
    private long[,] _along = new long[0, 0];
    private int _ends;
    private int _picks;

    /// <summary>Colours of the crossings.</summary>
    public IReadOnlyList<LinearColour> Colours => _colours;

    /// <summary>Looks at a face, read round its repeat of weave and colours.</summary>
    public static FaceCrossings Of(ClothGeometry cloth, bool front)
    {
        ClothQuestion question = cloth.Question;
        var face = new FaceCrossings { _ends = Stretch(question.Weave.Ends, question.Warp.Order), _picks = Stretch(question.Weave.Picks, question.Weft.Order) };
        LinearColour[] warp = [.. question.Warp.Yarns.Select(y => LinearColour.From(y.Colour))];
        LinearColour[] weft = [.. question.Weft.Yarns.Select(y => LinearColour.From(y.Colour))];
        double k1 = cloth.WarpCover.Value.Value;
        double k2 = cloth.WeftCover.Value.Value;
        var cells = new int[face._picks, face._ends];
        for (int pick = 0; pick < face._picks; pick++)
        {
            for (int end = 0; end < face._ends; end++)
            {
                (int Warp, int Weft, bool WarpUp) kind =
                    (question.Warp.Order[end], question.Weft.Order[pick], question.Weave[pick % question.Weave.Picks, end % question.Weave.Ends] == front);
                if (!face._colourOf.TryGetValue(kind, out int colour))
                {
                    colour = face._colourOf[kind] = face._colours.Count;
                    face._colours.Add(Light(warp[kind.Warp], weft[kind.Weft], kind.WarpUp, k1, k2));
                }

                cells[pick, end] = colour;
            }
        }

        face.Count(cells);
        return face;
    }

    /// <summary>The face in two parts.</summary>
    /// <param name="some">Colours of one part.</param>
    public FaceParts Part(HashSet<int> some)
    {
        (LinearColour one, long oneCount) = Mean(some.Contains);
        (LinearColour other, long otherCount) = some.Count == _colours.Count ? (one, 0) : Mean(c => !some.Contains(c));
        bool lighter = OkLab.From(one).L >= OkLab.From(other).L;
        return new FaceParts(
            lighter ? other : one,
            lighter ? one : other,
            (double)(lighter ? oneCount : otherCount) / ((long)_ends * _picks),
            Run(_across, some, _ends),
            Run(_along, some, _picks));
    }

    // Whole rounds of weave and order together, or as much of them as is looked at.
    private static int Stretch(int weave, ThreadOrder order) => (int)Math.Min(CommonRepeat.Of(weave, order.Repeat.Length), Math.Max(Most, weave));

    // What a crossing shows: the upper thread over its cover, the lower beside it, the holes shared out to both.
    private static LinearColour Light(LinearColour warp, LinearColour weft, bool warpUp, double k1, double k2)
    {
        double w1 = warpUp ? k1 : k1 * (1 - k2);
        double w2 = warpUp ? k2 * (1 - k1) : k2;
        return (warp * w1 + weft * w2) * (1 / Math.Max(w1 + w2, double.Epsilon));
    }

    private void Count(int[,] cells)
    {
        _counts = new long[_colours.Count];
        _across = new long[_colours.Count, _colours.Count];
        _along = new long[_colours.Count, _colours.Count];
        for (int pick = 0; pick < _picks; pick++)
        {
            for (int end = 0; end < _ends; end++)
            {
                int colour = cells[pick, end];
                _counts[colour]++;
                _across[colour, cells[pick, (end + 1) % _ends]]++;
                _along[colour, cells[(pick + 1) % _picks, end]]++;
            }
        }
    }

    private (LinearColour Light, long Count) Mean(Predicate<int> which)
    {
        LinearColour sum = default;
        long count = 0;
        for (int i = 0; i < _colours.Count; i++)
        {
            if (!which(i)) continue;
            sum += _colours[i] * _counts[i];
            count += _counts[i];
        }

        return (sum * (1.0 / count), count);
    }

    // Crossings for each change of part; the whole length where it never changes.
    private double Run(long[,] beside, HashSet<int> some, int length)
    {
        long changes = 0;
        for (int i = 0; i < _colours.Count; i++)
        {
            for (int j = 0; j < _colours.Count; j++)
            {
                if (some.Contains(i) != some.Contains(j)) changes += beside[i, j];
            }
        }

        return changes == 0 ? length : (double)_ends * _picks / changes;
    }
}
