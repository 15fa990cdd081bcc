using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Regular satin and sateen: one binding point on each pick, moved by a step that is not a twill's.</summary>
public static class Satin
{
    /// <summary>One end binds on each pick, a fixed step from pick to pick.</summary>
    public static Rule Rule { get; } = new(
        "satin",
        "on pick p (from 0) end (p × step mod n) + 1 binds; step and n share no divisor, step not 1 or n − 1; longest float n − 1",
        Source.Published("Brooks, Cotton Manufacturing (12 by 5, 5 by 2); Wolfensberger, Theory of Silk Weaving (steps)"));

    /// <summary>One repeat.</summary>
    /// <param name="ends">Ends in the repeat, 5 or 7 to 64.</param>
    /// <param name="step">A step of <see cref="SatinSteps"/>; the best if left out.</param>
    /// <param name="face">Which threads cover the face.</param>
    /// <exception cref="InputProblemException">No satin exists on so many ends, or not with this step.</exception>
    public static Weave Of(int ends, int? step = null, SatinFace face = SatinFace.Warp)
    {
        if (ends > ShaftSet.Highest || SatinSteps.Best(ends) is not int best)
        {
            throw new InputProblemException(new InputProblem(
                $"There is no regular satin on {ends} ends.",
                "ends",
                ends switch
                {
                    4 => "Use 5, 7 or more ends up to 64, or broken 1/3 twill on 4 shafts.",
                    6 => "Use 5, 7 or more ends up to 64, or the irregular satin on 6.",
                    _ => "Use 5 or 7 to 64 ends, for example 5 or 8.",
                }));
        }

        int s = step ?? best;
        if (!SatinSteps.On(ends).Contains(s))
        {
            throw new InputProblemException(new InputProblem(
                $"A step of {s} on {ends} ends makes no satin.", "step", $"Use one of {string.Join(", ", SatinSteps.On(ends))}."));
        }

        string kind = face == SatinFace.Warp ? "satin" : "sateen";
        return FromOrder($"{ends}-end {kind}, step {s}", Rule, [.. Enumerable.Range(0, ends).Select(p => p * s % ends + 1)], face);
    }

    internal static Weave FromOrder(string name, Rule rule, IReadOnlyList<int> order, SatinFace face)
    {
        int n = order.Count;
        ShaftSet all = ShaftSet.FirstOf(n);
        return Weave.FromLifts(
            name,
            rule,
            DrawOrder.Straight(n),
            [.. order.Select(b => face == SatinFace.Weft ? ShaftSet.Of(b) : new ShaftSet(all.Bits & ~ShaftSet.Of(b).Bits))]) with
        {
            Notes = n % 2 == 0
                ? [$"Floats of {n - 1} on both faces: a close sett keeps them down."]
                : [$"Floats of {n - 1} on both faces: a close sett keeps them down.", "An odd number of shafts on a straight draw has no tabby."],
        };
    }
}
