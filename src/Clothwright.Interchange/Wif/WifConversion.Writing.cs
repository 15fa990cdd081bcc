using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Wif;

public static partial class WifConversion
{
    /// <summary>A document that holds a draft, written by this program.</summary>
    /// <param name="woven">The draft. Lengths are written in centimetres; the commonest colour, spacing and thickness of a system becomes its default.</param>
    /// <exception cref="ArgumentException">A list does not hold one entry a thread, or a plan does not fit the draft.</exception>
    public static WifDocument ToDocument(WovenDraft woven)
    {
        ArgumentNullException.ThrowIfNull(woven);
        Draft draft = woven.Draft;
        if (!draft.LiftPlan.IsEmpty && !draft.Treadling.IsEmpty && draft.LiftPlan.Length != draft.Treadling.Length)
        {
            throw new ArgumentException($"The lift plan has {draft.LiftPlan.Length} picks and the treadling {draft.Treadling.Length}.", nameof(woven));
        }

        woven.Warp.RequireFor(draft.Ends);
        woven.Weft.RequireFor(draft.Picks);
        var numbers = new Dictionary<SrgbColour, int>();
        foreach (SrgbColour colour in woven.Warp.Colours.Concat(woven.Weft.Colours)) numbers.TryAdd(colour, numbers.Count + 1);
        return new WifDocument
        {
            Source = new WifSource { Program = "Clothwright" },
            Text = new WifText { Title = draft.Name },
            Shafts = draft.Shafts,
            Treadles = draft.TieUp.Length,
            RisingShed = draft.RisingShed,
            Palette = numbers.Count == 0 ? null : new WifPalette(numbers.Count, WifNumbered.Of(numbers.Select(n => KeyValuePair.Create(n.Value, n.Key)))),
            Threading = WifNumbered.Sparse(draft.Threading.AsSpan(), ShaftSet.None),
            TieUp = draft.TieUp.IsEmpty ? null : WifNumbered.Sparse(draft.TieUp.AsSpan(), ShaftSet.None),
            Treadling = draft.Treadling.IsEmpty ? null : WifNumbered.Sparse(draft.Treadling.AsSpan(), ShaftSet.None),
            LiftPlan = draft.LiftPlan.IsEmpty ? null : WifNumbered.Sparse(draft.LiftPlan.AsSpan(), ShaftSet.None),
            Warp = ThreadsOf(woven.Warp, draft.Ends, numbers),
            Weft = ThreadsOf(woven.Weft, draft.Picks, numbers),
        };
    }

    private static WifThreads ThreadsOf(WovenThreads threads, int count, Dictionary<SrgbColour, int> numbers)
    {
        ImmutableArray<int> colours = [.. threads.Colours.Select(colour => numbers[colour])];
        ImmutableArray<double> spacings = Centimetres(threads.Spacings);
        ImmutableArray<double> thicknesses = Centimetres(threads.Thicknesses);
        int colour = Commonest(colours);
        double spacing = Commonest(spacings);
        double thickness = Commonest(thicknesses);
        return new WifThreads
        {
            Count = count,
            Units = spacings.IsEmpty && thicknesses.IsEmpty ? null : WifUnits.Centimeters,
            Colour = colours.IsEmpty ? null : colour,
            Colours = WifNumbered.Sparse(colours.AsSpan(), colour),
            Spacing = spacings.IsEmpty ? null : spacing,
            Spacings = WifNumbered.Sparse(spacings.AsSpan(), spacing),
            Thickness = thicknesses.IsEmpty ? null : thickness,
            Thicknesses = WifNumbered.Sparse(thicknesses.AsSpan(), thickness),
        };
    }

    // Twelve digits: the noise of turning metres into centimetres and back does not belong in a file.
    private static ImmutableArray<double> Centimetres(ImmutableArray<Length> lengths) =>
        [.. lengths.Select(static length => double.Parse(length.Centimetres.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture))];

    private static T Commonest<T>(ImmutableArray<T> items)
        where T : struct => items.GroupBy(item => item).OrderByDescending(group => group.Count()).Select(group => group.Key).FirstOrDefault();
}
