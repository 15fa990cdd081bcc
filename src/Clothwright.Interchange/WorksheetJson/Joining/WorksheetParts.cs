using System.Collections.Immutable;
using Clothwright.Core.Worksheets;

namespace Clothwright.Interchange.WorksheetJson.Joining;

/// <summary>Takes worksheets apart by <see cref="WorksheetPart"/> and puts them together.</summary>
public static class WorksheetParts
{
    /// <summary>Every part, in the order of the page.</summary>
    public static ImmutableArray<WorksheetPart> All { get; } = [.. Enum.GetValues<WorksheetPart>()];

    /// <summary>A worksheet with one part taken from another.</summary>
    /// <param name="into">The worksheet that keeps all its other parts.</param>
    /// <param name="part">The part.</param>
    /// <param name="from">The worksheet that gives it.</param>
    public static Worksheet Take(Worksheet into, WorksheetPart part, Worksheet from)
    {
        ArgumentNullException.ThrowIfNull(into);
        ArgumentNullException.ThrowIfNull(from);
        return part switch
        {
            WorksheetPart.Title => into with { Title = from.Title, Note = from.Note },
            WorksheetPart.Units => into with { Units = from.Units },
            WorksheetPart.Looms => into with { Looms = from.Looms, Reeds = from.Reeds, Heddles = from.Heddles, LoomId = from.LoomId },
            WorksheetPart.Yarns => into with { Shelf = from.Shelf },
            WorksheetPart.Weave => into with { Weave = from.Weave },
            WorksheetPart.Sett => into with { Purpose = from.Purpose, Sett = from.Sett, Reed = from.Reed },
            WorksheetPart.Colours => into with { Warp = from.Warp },
            WorksheetPart.Warp => into with
            {
                EndsFit = from.EndsFit,
                SelvedgeEnds = from.SelvedgeEnds,
                FloatingSelvedges = from.FloatingSelvedges,
                Sample = from.Sample,
                Header = from.Header,
                Gap = from.Gap,
                Allowances = from.Allowances,
            },
            WorksheetPart.Pieces => into with { Pieces = from.Pieces },
            WorksheetPart.Money => into with { Currency = from.Currency, Rates = from.Rates },
            _ => throw new ArgumentOutOfRangeException(nameof(part), part, "There is no such part."),
        };
    }

    /// <summary>Whether a part is written alike on two worksheets.</summary>
    /// <param name="part">The part.</param>
    /// <param name="one">A worksheet.</param>
    /// <param name="other">Another.</param>
    public static bool Alike(WorksheetPart part, Worksheet one, Worksheet other) =>
        WorksheetWriter.Write(Take(one, part, other)).AsSpan().SequenceEqual(WorksheetWriter.Write(one));

    /// <summary>The parts that are written otherwise on two worksheets.</summary>
    /// <param name="one">A worksheet.</param>
    /// <param name="other">Another.</param>
    public static ImmutableArray<WorksheetPart> Differing(Worksheet one, Worksheet other) => [.. All.Where(p => !Alike(p, one, other))];
}
