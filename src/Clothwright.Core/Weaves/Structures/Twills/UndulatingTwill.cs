using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Undulating twill: shafts repeated here and skipped there, so that the line flattens and steepens.</summary>
public static class UndulatingTwill
{
    /// <summary>Straight order, each shaft with as many ends as the list says.</summary>
    public static Rule Rule { get; } = new(
        "undulating twill", "straight order, each shaft in turn threaded as often as the list says, 0 = skipped; weft floats swell with the repeats", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="figures">Ends up and down; their sum is the number of shafts.</param>
    /// <param name="ends">Ends on each shaft in turn, 0 to 8; the list is gone through until it meets shaft 1 again.</param>
    /// <exception cref="InputProblemException">The list is empty, or a number is out of range.</exception>
    public static Weave Of(TwillBase figures, IReadOnlyList<int> ends)
    {
        int n = figures.Shafts;
        if (ends.Count is 0 or > 256 || ends.Any(e => e is < 0 or > 8) || ends.All(e => e == 0))
        {
            throw new InputProblemException(new InputProblem(
                $"\"{string.Join(' ', ends)}\" does not say how many ends each shaft has.", "ends", "Give 0 to 8 ends for each shaft in turn, for example 2 2 2 2 1 1 1 1."));
        }

        int rounds = n / Divisors.Greatest(ends.Count, n);
        int[] threading =
        [
            .. Enumerable.Range(0, rounds * ends.Count).SelectMany(i => Enumerable.Repeat(DrawOrder.Wrap(i + 1, n), ends[i % ends.Count])),
        ];
        if (threading.Distinct().Count() < n)
        {
            throw new InputProblemException(new InputProblem(
                $"\"{string.Join(' ', ends)}\" leaves some of the {n} shafts without ends.", "ends", "Give each shaft an end somewhere in the repeat, for example 2 2 2 2 1 1 1 1."));
        }

        return Weave.FromTreadles($"undulating {figures} twill", Rule, threading, figures.TieUp, DrawOrder.Straight(n)) with
        {
            Notes = [$"Weft floats reach {figures.LongestFloat} times the most ends on neighbouring shafts; no tabby where a shaft is repeated."],
        };
    }
}
