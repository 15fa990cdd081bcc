using System.Collections.Immutable;
using Clothwright.Core.Worksheets;

namespace Clothwright.Interchange.WorksheetJson.Joining;

/// <summary>What came of joining two worksheets that were both made from a third.</summary>
/// <remarks>A part that only one side changed is taken from that side. A part that both changed, and otherwise, is a question for the weaver: nothing is overwritten unasked.</remarks>
public sealed record WorksheetJoin
{
    private WorksheetJoin(Worksheet mine, Worksheet theirs)
    {
        Mine = mine;
        Theirs = theirs;
    }

    /// <summary>The worksheet as it stands here.</summary>
    public Worksheet Mine { get; }

    /// <summary>The worksheet as it stands elsewhere.</summary>
    public Worksheet Theirs { get; }

    /// <summary>Mine with every part taken in that only they changed; the parts in question stand as they are in mine.</summary>
    public required Worksheet Joined { get; init; }

    /// <summary>Parts that were taken from theirs.</summary>
    public required ImmutableArray<WorksheetPart> Taken { get; init; }

    /// <summary>Parts that both changed, and otherwise.</summary>
    public required ImmutableArray<WorksheetPart> Questions { get; init; }

    /// <summary>Joins two worksheets.</summary>
    /// <param name="origin">What both were made from; null where it is not known, so that every difference is a question.</param>
    /// <param name="mine">The worksheet as it stands here.</param>
    /// <param name="theirs">The worksheet as it stands elsewhere.</param>
    public static WorksheetJoin Of(Worksheet? origin, Worksheet mine, Worksheet theirs)
    {
        ArgumentNullException.ThrowIfNull(mine);
        ArgumentNullException.ThrowIfNull(theirs);
        var taken = ImmutableArray.CreateBuilder<WorksheetPart>();
        var questions = ImmutableArray.CreateBuilder<WorksheetPart>();
        Worksheet joined = mine;
        foreach (WorksheetPart part in WorksheetParts.Differing(mine, theirs))
        {
            if (origin is not null && WorksheetParts.Alike(part, origin, theirs)) continue;
            if (origin is not null && WorksheetParts.Alike(part, origin, mine))
            {
                joined = WorksheetParts.Take(joined, part, theirs);
                taken.Add(part);
            }
            else
            {
                questions.Add(part);
            }
        }

        return new WorksheetJoin(mine, theirs) { Joined = joined, Taken = taken.ToImmutable(), Questions = questions.ToImmutable() };
    }

    /// <summary>The joined worksheet once every question is answered.</summary>
    /// <param name="theirs">The questions that are answered with their part; for all others mine holds.</param>
    public Worksheet Answered(IReadOnlyCollection<WorksheetPart> theirs)
    {
        ArgumentNullException.ThrowIfNull(theirs);
        return Questions.Where(theirs.Contains).Aggregate(Joined, (sheet, part) => WorksheetParts.Take(sheet, part, Theirs));
    }
}
