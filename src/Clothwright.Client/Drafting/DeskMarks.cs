using Clothwright.Core.Weaves.Editing;

namespace Clothwright.Client.Drafting;

/// <summary>Threads that are marked for a verb.</summary>
/// <param name="Part">The part in which they are marked.</param>
/// <param name="Threads">The ends, picks or treadles; in the cloth the ends.</param>
/// <param name="Picks">In the cloth the picks; one otherwise.</param>
public readonly record struct DeskMarks(DeskPart Part, ThreadSpan Threads, ThreadSpan Picks)
{
    /// <summary>The threads from one place to another of the same part.</summary>
    /// <param name="from">Where marking began.</param>
    /// <param name="to">Where it has come to.</param>
    public static DeskMarks Between(DeskPlace from, DeskPlace to) => new(
        from.Part,
        ThreadSpan.Between(from.Thread, to.Thread),
        from.Part == DeskPart.Cloth ? ThreadSpan.Between(from.Number, to.Number) : new ThreadSpan(0, 1));
}
