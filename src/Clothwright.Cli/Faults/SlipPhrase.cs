using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;

namespace Clothwright.Cli.Faults;

/// <summary>Reads a slip told in plain words, for example <c>end 7 on shaft 3</c>.</summary>
internal static class SlipPhrase
{
    /// <summary>How slips are told.</summary>
    public static readonly string[] Forms =
    [
        "end 7 on shaft 3", "ends 7 and 8 crossed", "end 7 left out", "end 7 doubled", "dent before end 7 empty", "dent of end 7 crowded",
        "pick 3 on treadle 2", "pick 3 lifts 1 and 4", "pick 3 left out", "pick 3 doubled", "treadle 2 not tied to shaft 3", "treadle 2 also tied to shaft 3",
    ];

    private static readonly (string Pattern, Func<Draft, int[], Slip> Make)[] Readings =
    [
        ("end # on shaft *", (d, n) => new WrongHeddle(End(d, n[0]), Set(n[1..], d.Shafts, "shaft"))),
        ("end # on no shaft", (d, n) => new WrongHeddle(End(d, n[0]), ShaftSet.None)),
        ("end # # crossed", (d, n) => Neighbours(End(d, n[0]), End(d, n[1]))),
        ("end # left", (d, n) => new EndLeftOut(End(d, n[0]))),
        ("end # doubled", (d, n) => new EndDoubled(End(d, n[0]))),
        ("dent before end # empty", (d, n) => new MissedDent(End(d, n[0]))),
        ("dent of end # crowded", (d, n) => new MissedDent(End(d, n[0]), Crowded: true)),
        ("pick # on treadle *", (d, n) => OnTreadles(d, n[0], n[1..])),
        ("pick # on no treadle", (d, n) => OnTreadles(d, n[0], [])),
        ("pick # lifts *", (d, n) => Lifting(d, n[0], n[1..])),
        ("pick # lifts shaft *", (d, n) => Lifting(d, n[0], n[1..])),
        ("pick # lifts no", (d, n) => Lifting(d, n[0], [])),
        ("pick # left", (d, n) => new PickLeftOut(Pick(d, n[0]))),
        ("pick # doubled", (d, n) => new PickDoubled(Pick(d, n[0]))),
        ("treadle # not tied to shaft #", (d, n) => Tie(d, n[0], n[1], isTied: true)),
        ("treadle # also tied to shaft #", (d, n) => Tie(d, n[0], n[1], isTied: false)),
    ];

    /// <summary>The slip.</summary>
    /// <param name="text">As typed; case does not matter. Ends, picks, shafts and treadles are counted from 1.</param>
    /// <param name="draft">The draft in which it is made.</param>
    /// <exception cref="InputProblemException">The words tell no slip, or none that this draft allows.</exception>
    public static Slip Read(string text, Draft draft)
    {
        var phrase = new PlainPhrase(text);
        foreach ((string pattern, Func<Draft, int[], Slip> make) in Readings)
        {
            if (phrase.Numbers(pattern) is { } numbers) return make(draft, numbers);
        }

        throw Problem($"\"{text}\" tells no slip that is known here.", $"Write for example \"{string.Join("\", \"", Forms)}\".");
    }

    private static CrossedEnds Neighbours(int one, int other) => Math.Abs(one - other) == 1
        ? new CrossedEnds(Math.Min(one, other))
        : throw Problem($"Ends {one + 1} and {other + 1} are not neighbours.", "Name two ends side by side, for example ends 7 and 8.");

    private static WrongTreadle OnTreadles(Draft draft, int pick, int[] treadles) => draft.LiftPlan.IsEmpty
        ? new WrongTreadle(Pick(draft, pick), Set(treadles, draft.Treadles, "treadle"))
        : throw Problem("The draft has a lift plan and no treadles.", "Say what the pick lifts, for example \"pick 3 lifts 1 and 4\".");

    private static WrongTreadle Lifting(Draft draft, int pick, int[] shafts) => draft.LiftPlan.IsEmpty
        ? throw Problem("The draft is woven with treadles.", "Say which treadle was pressed, for example \"pick 3 on treadle 2\".")
        : new WrongTreadle(Pick(draft, pick), Set(shafts, draft.Shafts, "shaft"));

    private static WrongTie Tie(Draft draft, int treadle, int shaft, bool isTied)
    {
        Within(treadle, draft.Treadles, "treadle");
        Within(shaft, draft.Shafts, "shaft");
        return draft.TieUp[treadle - 1].Contains(shaft) == isTied
            ? new WrongTie(treadle, shaft)
            : throw Problem(
                $"Treadle {treadle} is {(isTied ? "not to be" : "to be")} tied to shaft {shaft} anyway.",
                $"Say \"treadle {treadle} {(isTied ? "also" : "not")} tied to shaft {shaft}\", or name another shaft.");
    }

    private static int End(Draft draft, int number) => Within(number, draft.Ends, "end") - 1;

    private static int Pick(Draft draft, int number) => Within(number, draft.Picks, "pick") - 1;

    private static ShaftSet Set(int[] numbers, int most, string thing) => ShaftSet.Of([.. numbers.Select(n => Within(n, most, thing))]);

    private static int Within(int number, int most, string thing) => number >= 1 && number <= most
        ? number
        : throw Problem($"The draft has no {thing} {number}.", most == 0 ? $"It has no {thing}s at all." : $"The {thing}s are numbered 1 to {most}.");

    private static InputProblemException Problem(string what, string mend) => new(new InputProblem(what, "--slip", mend));
}
