using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Straight twill: the same figures on every pick, moved on by one end.</summary>
public static class Twill
{
    /// <summary>Each pick repeats the one before, one end further.</summary>
    public static Rule Rule { get; } = new(
        "twill", "warp on top on pick p, end e where the figures are up at place (e − p) mod n; treadling reversed for the S hand", Source.Derivation);

    /// <summary>One repeat on a straight draw.</summary>
    /// <param name="figures">Ends up and down.</param>
    /// <param name="hand">Which way the line runs.</param>
    public static Weave Of(TwillBase figures, TwillHand hand = TwillHand.Z)
    {
        int n = figures.Shafts;
        int[] treadling = DrawOrder.Straight(n);
        if (hand == TwillHand.S) Array.Reverse(treadling);
        string name = hand == TwillHand.S ? $"{figures} twill, S" : $"{figures} twill";
        return Weave.FromTreadles(name, Rule, DrawOrder.Straight(n), figures.TieUp, treadling);
    }
}
