using System.Collections.Immutable;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Colours;
using Clothwright.Core.Setts;

namespace Clothwright.Core.Cloths;

public sealed partial record ClothGeometry
{
    /// <summary>Colour of each face from afar, in the yarns' colours and order.</summary>
    /// <param name="behind">What shows through the holes; null shares the holes out to the threads.</param>
    public FusedColours FusedColours(LinearColour? behind = null)
    {
        Func<int, LinearColour> warp = Colours(Question.Warp);
        Func<int, LinearColour> weft = Colours(Question.Weft);
        return Faces.FusedColours.Of(Question.Weave, warp, weft, WarpCover.Value.Value, WeftCover.Value.Value, behind);
    }

    private static Func<int, LinearColour> Colours(ThreadSystem threads)
    {
        ImmutableArray<LinearColour> colours = [.. threads.Yarns.Select(y => LinearColour.From(y.Colour))];
        return thread => colours[threads.Order[thread]];
    }
}
