using System.Collections.Immutable;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Places;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Cloths.Look.Pictures;

public sealed partial class LookNumbers
{
    /// <summary>The numbers of a description.</summary>
    /// <param name="look">The cloth.</param>
    /// <exception cref="ArgumentException">It has no ends or no picks, or a thread has no width.</exception>
    public static LookNumbers Of(LookDescription look)
    {
        ArgumentNullException.ThrowIfNull(look);
        if (look.Ends.IsDefaultOrEmpty || look.Picks.IsDefaultOrEmpty) throw new ArgumentException("A cloth has at least one end and one pick.", nameof(look));
        ThreadPlaces across = ThreadPlaces.Lay(look.Ends, look.SharedEnds, look.EndSett, 0);
        ThreadPlaces along = ThreadPlaces.Lay(look.Picks, look.SharedPicks, look.PickSett, 0);
        var book = new LookBook();
        ThreadRound ends = Round(book, look.Ends, look.SharedEnds, ThreadDirection.Warp, across, look.WarpYarnPerLength, look.Length?.Millimetres ?? DefaultLength);
        ThreadRound picks = Round(book, look.Picks, look.SharedPicks, ThreadDirection.Weft, along, look.WeftYarnPerLength, look.Width?.Millimetres ?? DefaultWidth);
        double both = MeanHeight(look.Ends) + MeanHeight(look.Picks);
        double warp = both * look.WarpRise;
        return new LookNumbers
        {
            Description = look,
            Looks = book.Looks,
            Lustres = book.Lustres,
            Lights = book.Lights,
            Stretches = book.Stretches,
            Ends = ends,
            Picks = picks,
            WarpHeight = (float)warp,
            WeftHeight = (float)(both - warp),
            WarpSteepest = Math.PI / 2 * warp / along.Pitch,
            WeftSteepest = Math.PI / 2 * (both - warp) / across.Pitch,
        };
    }

    // Where the cloth may be of any size: how far a clasp lies from the edge.
    private const double DefaultLength = 2000;
    private const double DefaultWidth = 500;

    private static ThreadRound Round(
        LookBook book, ImmutableArray<ThreadLook> threads, ImmutableArray<bool> shared, ThreadDirection direction, ThreadPlaces places, double yarnPerLength, double extent)
    {
        int count = shared.IsDefaultOrEmpty ? threads.Length : (int)CommonRepeat.Of(threads.Length, shared.Length);
        var round = new ThreadRound(new int[count], new int[count], new float[count]);
        for (int i = 0; i < count; i++)
        {
            ThreadLook thread = threads[i % threads.Length];
            bool above = ThreadPlaces.IsShared(shared, i);
            round.Looks[i] = book.NumberOf(thread, direction, above, places, yarnPerLength);
            round.Clasps[i] = thread.ClaspedWith is { } other ? book.NumberOf(other, direction, above, places, yarnPerLength) : -1;
            round.ClaspMillimetres[i] = (float)(thread.ClaspShare * extent);
        }

        return round;
    }

    private static double MeanHeight(ImmutableArray<ThreadLook> threads) => threads.Average(t => t.Height.Millimetres);
}
