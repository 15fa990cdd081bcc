using System.Collections.Immutable;
using Clothwright.Core.Weaves;
using Clothwright.Drawing.Drafts.Marks;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Drafts;

/// <summary>Lays out a draft as a figure: threading, tie-up or lift plan, treadling, drawdown and the colours of the threads.</summary>
internal static class DraftSheet
{
    /// <summary>The whole draft on one sheet, repeats bracketed if the style says so.</summary>
    /// <param name="draft">The draft; with at least one end and one pick.</param>
    /// <param name="colours">Colours of the threads.</param>
    /// <param name="style">Style.</param>
    /// <exception cref="ArgumentException">The draft has no ends or no picks.</exception>
    public static Figure Whole(Draft draft, DraftColours colours, DraftStyle style)
    {
        (DraftAxis ends, DraftAxis picks, DraftColours shown) = DraftAxes.Of(draft, colours, style);
        Figure figure = Part(draft, shown, style, ends, picks);
        return style.Marks is { } marks
            ? ClothMarksInk.On(figure, new DraftLayout(draft, shown, style, ends, picks), marks, draft.Ends, draft.Picks)
            : figure;
    }

    /// <summary>The draft cut into sheets that fit a page, first ends and first picks first.</summary>
    /// <param name="draft">The draft; with at least one end and one pick.</param>
    /// <param name="colours">Colours of the threads.</param>
    /// <param name="style">Style.</param>
    /// <param name="width">Greatest width of a sheet, in points.</param>
    /// <param name="height">Greatest height of a sheet, in points.</param>
    public static ImmutableArray<Figure> Pages(Draft draft, DraftColours colours, DraftStyle style, float width, float height)
    {
        (DraftAxis ends, DraftAxis picks, DraftColours shown) = DraftAxes.Of(draft, colours, style);
        DraftLayout all = new(draft, shown, style, ends, picks);
        int endsFit = all.SlotsThatFit(width - (all.Width - all.EndsLength), ends);
        int picksFit = all.SlotsThatFit(height - (all.Height - all.PicksLength), picks);
        var pages = ImmutableArray.CreateBuilder<Figure>();
        for (int pick = 0; pick < picks.Slots.Length; pick += picksFit)
        {
            for (int end = 0; end < ends.Slots.Length; end += endsFit)
            {
                pages.Add(Part(draft, shown, style, ends.Slice(end, endsFit), picks.Slice(pick, picksFit)));
            }
        }

        return pages.ToImmutable();
    }

    private static Figure Part(Draft draft, DraftColours colours, DraftStyle style, DraftAxis ends, DraftAxis picks)
    {
        if (draft.Ends == 0 || draft.Picks == 0) throw new ArgumentException("A draft without ends or picks cannot be drawn.", nameof(draft));
        return new DraftInk(draft, colours, style, new DraftLayout(draft, colours, style, ends, picks)).Draw();
    }
}
