using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Threads;

/// <summary>The repeat of a cloth or of a draft.</summary>
/// <param name="Ends">Ends of the shortest repeat that goes a whole number of times into the width.</param>
/// <param name="Picks">Picks of the shortest repeat that goes a whole number of times into the length.</param>
/// <param name="RunningEnds">Ends after which the width goes on as it began, though it may stop within a repeat.</param>
/// <param name="RunningPicks">Picks after which the length goes on as it began, though it may stop within a repeat.</param>
public sealed record ClothRepeat(int Ends, int Picks, int RunningEnds, int RunningPicks)
{
    /// <summary>The repeat of a drawdown.</summary>
    /// <param name="cloth">The drawdown.</param>
    public static ClothRepeat Of(Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return Of(LineClasses.OfEnds(cloth), LineClasses.OfPicks(cloth));
    }

    /// <summary>The repeat of a draft as it is threaded and treadled, which may be longer than that of its cloth.</summary>
    /// <param name="draft">The draft.</param>
    public static ClothRepeat Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return Of(Numbered(draft.Threading), Numbered(draft.LiftPlan.IsEmpty ? draft.Treadling : draft.LiftPlan));
    }

    internal static ClothRepeat Of(LineClasses ends, LineClasses picks) => Of(ends.ClassOf.AsSpan(), picks.ClassOf.AsSpan());

    private static ClothRepeat Of(ReadOnlySpan<int> ends, ReadOnlySpan<int> picks) =>
        new(RepeatLength.Whole(ends), RepeatLength.Whole(picks), RepeatLength.Running(ends), RepeatLength.Running(picks));

    private static int[] Numbered(ImmutableArray<ShaftSet> list)
    {
        var numbers = new Dictionary<ShaftSet, int>();
        return [.. list.Select(s => numbers.TryGetValue(s, out int n) ? n : numbers[s] = numbers.Count)];
    }
}
