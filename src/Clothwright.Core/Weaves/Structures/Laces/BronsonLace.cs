using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Bronson lace: units of six ends whose blocks make lace or plain weave by themselves, and may stand side by side.</summary>
public static class BronsonLace
{
    /// <summary>Every other end on shaft 1, a tie-down on shaft 2, blocks on the others.</summary>
    public static Rule Rule { get; } = new(
        "Bronson lace",
        "unit 1 b 1 b 1 2; six picks 1 / 2 + others / 1 / 2 + others / 1 / all but 1; a block whose shaft is left out floats 5; tabby 1 / all but 1",
        Source.Derivation);

    /// <summary>One repeat of a profile.</summary>
    /// <param name="profile">Blocks across and blocks that show lace on each line.</param>
    /// <exception cref="InputProblemException">There are too many blocks.</exception>
    public static Weave Of(Profile profile)
    {
        int blocks = profile.Blocks;
        if (blocks + 2 > ShaftSet.Highest)
        {
            throw new InputProblemException(new InputProblem($"{blocks} blocks take {blocks + 2} shafts.", "blocks", $"Keep to {ShaftSet.Highest} shafts."));
        }

        ShaftSet ground = ShaftSet.Of(1);
        var rest = new ShaftSet(ShaftSet.FirstOf(blocks + 2).Bits & ~ground.Bits);
        int[] threading = [.. profile.Ends.SelectMany(b => new[] { 1, b + 2, 1, b + 2, 1, 2 })];
        ShaftSet[] lifts =
        [
            .. profile.Picks.SelectMany(shown =>
            {
                var lace = new ShaftSet(rest.Bits & ~(shown.Bits << 2));
                return new[] { ground, lace, ground, lace, ground, rest };
            }),
        ];
        return Weave.FromLifts("Bronson lace", Rule, threading, lifts).Noting(
            "Floats of 5 where a block shows lace.",
            $"{blocks + 2} shafts; tabby 1 / all but 1 for hems and edges. Half of all ends are on shaft 1: count its heddles.");
    }
}
