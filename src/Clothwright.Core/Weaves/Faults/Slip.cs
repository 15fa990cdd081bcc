namespace Clothwright.Core.Weaves.Faults;

/// <summary>One mistake in dressing or weaving: what it does to the draft, how it is told, and how it is mended.</summary>
/// <remarks>Ends and picks are 0-based here and numbered from 1 in every sentence. Several slips act one after the other.</remarks>
public abstract record Slip
{
    /// <summary>What kind of slip it is.</summary>
    public abstract SlipKind Kind { get; }

    /// <summary>The draft as it is with the slip made.</summary>
    /// <param name="draft">The draft before.</param>
    /// <exception cref="ArgumentOutOfRangeException">The draft has no such end, pick, shaft or treadle.</exception>
    public abstract Draft Apply(Draft draft);

    /// <summary>What happened, as a sentence, for example <c>End 7 is on shaft 4 instead of 3.</c></summary>
    /// <param name="draft">The draft before the slip.</param>
    public abstract string Describe(Draft draft);

    /// <summary>How to put it right.</summary>
    /// <param name="draft">The draft before the slip.</param>
    /// <param name="picksWoven">Picks woven so far.</param>
    public abstract SlipMend Mend(Draft draft, int picksWoven);

    /// <summary>What the slip will look like in a cloth.</summary>
    /// <param name="draft">The draft before the slip.</param>
    public SlipEffect Effect(Draft draft) => SlipEffect.Of(draft.Drawdown(), Apply(draft), this);

    /// <summary>Where along its own direction the slip sits, for a stable order of equal readings.</summary>
    internal abstract (int Place, int Detail) Order { get; }

    /// <summary>How unlikely the slip is among its like; 0 for the likeliest. A judgement of our own, used only to rank equal readings.</summary>
    internal virtual int Oddity(Draft draft) => 0;

    // The yarns of the threads once a line is taken out, or doubled.
    private protected static ThreadOrder Without(ThreadOrder order, int threads, int line) => order.Repeat.Length == 1
        ? order
        : ThreadOrder.Of([.. Enumerable.Range(0, threads).Where(t => t != line).Select(t => order[t]).DefaultIfEmpty()]);

    private protected static ThreadOrder Doubled(ThreadOrder order, int threads, int line) => order.Repeat.Length == 1
        ? order
        : ThreadOrder.Of([.. Enumerable.Range(0, threads + 1).Select(t => order[t > line ? t - 1 : t])]);

    private protected static int Checked(int index, int count, string thing) => index >= 0 && index < count
        ? index
        : throw new ArgumentOutOfRangeException(thing, index, $"The draft has {count} of these.");
}
