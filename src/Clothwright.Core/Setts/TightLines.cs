using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Setts;

/// <summary>Finds the pick and the end that take most room.</summary>
internal static class TightLines
{
    internal static (TightLine Pick, TightLine End) Of(SettQuestion question, WeaveCounts counts, Derived<Length> warp, Derived<Length> weft) => (
        Tightest("closest ends at the tightest pick", question.Weft, counts.TransitionsPerPick, counts.Ends, warp),
        Tightest("closest picks at the tightest end", question.Warp, counts.TransitionsPerEnd, counts.Picks, weft));

    // Room that a thread takes between its neighbours = changes of face × its own diameter.
    private static TightLine Tightest(string label, ThreadSystem threads, ImmutableArray<int> changes, int across, Derived<Length> side)
    {
        Derived<Length>[] diameters = [.. threads.Yarns.Select(YarnDiameter.Of)];
        int tightest = 0;
        double most = -1;
        for (int i = 0; i < changes.Length; i++)
        {
            double room = changes[i] * diameters[threads.Order[i]].Value.Metres;
            if (room <= most) continue;
            most = room;
            tightest = i;
        }

        Derived<Length> own = diameters[threads.Order[tightest]];
        return new TightLine(
            tightest,
            changes[tightest],
            AshenhurstIntersections.Threads(label, side, own, (double)across / changes[tightest]));
    }
}
