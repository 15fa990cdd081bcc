using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Wif;

/// <summary>Takes the draft out of a document, and puts one in.</summary>
public static partial class WifConversion
{
    /// <summary>Colour of threads of which a file says nothing: undyed linen.</summary>
    public static SrgbColour Undyed { get; } = new(0xE9, 0xE1, 0xCF);

    /// <summary>The draft of a document, with colours, spacings and thicknesses thread by thread where the document gives any.</summary>
    /// <param name="document">The document. Where it holds both plans the draft holds both, and weaves by the lift plan.</param>
    /// <returns>The draft, or the problem: there is no threading, no plan, or there are no threads.</returns>
    public static Parsed<WovenDraft> ToDraft(WifDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Threading is null || document.Warp.Count == 0)
        {
            return new InputProblem("The file holds no threading.", "[THREADING]", "Add a section [THREADING] with a line for each end, for example 1=1, and Threads= in [WARP].");
        }

        if ((document.Treadling is null && document.LiftPlan is null) || document.Weft.Count == 0)
        {
            return new InputProblem("The file holds neither treadling nor lift plan.", "[TREADLING]", "Add [TIEUP] and [TREADLING], or [LIFTPLAN], with a line for each pick, for example 1=1,2, and Threads= in [WEFT].");
        }

        var draft = new Draft
        {
            Shafts = Math.Max(1, document.Shafts),
            Threading = Dense(document.Threading, document.Warp.Count),
            TieUp = document.Treadles == 0 ? [] : Dense(document.TieUp ?? WifNumbered.None<ShaftSet>(), document.Treadles),
            Treadling = document.Treadling is null ? [] : Dense(document.Treadling, document.Weft.Count),
            LiftPlan = document.LiftPlan is null ? [] : Dense(document.LiftPlan, document.Weft.Count),
            RisingShed = document.RisingShed,
            Name = document.Text.Title,
        };
        return new WovenDraft(draft, Threads(document.Warp, document.Palette), Threads(document.Weft, document.Palette));
    }

    private static ImmutableArray<ShaftSet> Dense(WifNumbered<ShaftSet> plan, int count)
    {
        var all = new ShaftSet[count];
        foreach ((int number, ShaftSet set) in plan) all[number - 1] = set;
        return ImmutableCollectionsMarshal.AsImmutableArray(all);
    }

    private static WovenThreads Threads(WifThreads threads, WifPalette? palette) => new()
    {
        Colours = palette is null || palette.Colours.Count == 0 || (threads.Colour is null && threads.Colours.Count == 0) ? [] : Colours(threads, palette),
        Spacings = Lengths(threads.Count, threads.Spacing, threads.Spacings, threads.Units),
        Thicknesses = Lengths(threads.Count, threads.Thickness, threads.Thicknesses, threads.Units),
    };

    private static ImmutableArray<SrgbColour> Colours(WifThreads threads, WifPalette palette)
    {
        SrgbColour usual = threads.Colour is { } number && palette.Colours.TryGet(number, out SrgbColour listed) ? listed : Undyed;
        var all = new SrgbColour[threads.Count];
        Array.Fill(all, usual);
        foreach ((int thread, int colour) in threads.Colours)
        {
            if (palette.Colours.TryGet(colour, out SrgbColour own)) all[thread - 1] = own;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(all);
    }

    private static ImmutableArray<Length> Lengths(int count, double? usual, WifNumbered<double> own, WifUnits? units)
    {
        if (usual is null && own.Count == 0) return [];
        var all = new Length[count];
        Array.Fill(all, WifLength.ToLength(usual ?? 0, units));
        foreach ((int thread, double value) in own) all[thread - 1] = WifLength.ToLength(value, units);
        return ImmutableCollectionsMarshal.AsImmutableArray(all);
    }
}
