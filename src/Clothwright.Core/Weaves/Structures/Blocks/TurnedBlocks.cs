using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Blocks of twill or satin beside the same weave turned to its other face, as in damask; the edges cut cleanly.</summary>
public static class TurnedBlocks
{
    /// <summary>Weft-faced cell beside its complement in reversed order: neighbours across every edge oppose each other.</summary>
    public static Rule Rule { get; } = new(
        "turned blocks",
        "shown: end (p × step + c mod n) + 1 binds on pick p, 2c + 1 ≡ step mod n; hidden: the complement with the picks reversed; threads on either side of every block edge are complements",
        Source.Derivation);

    /// <summary>The two cells.</summary>
    /// <param name="ends">Ends in a unit, 3 to 16.</param>
    /// <param name="step">1 for twill, or a step of <see cref="SatinSteps"/>.</param>
    /// <exception cref="InputProblemException">The step does not suit the ends.</exception>
    public static UnitWeave Unit(int ends, int step)
    {
        if (ends is < 3 or > 16 || (step != 1 && !SatinSteps.On(ends).Contains(step)))
        {
            throw new InputProblemException(new InputProblem(
                $"Blocks of {ends} ends with a step of {step} do not cut cleanly.",
                "step",
                ends is < 3 or > 16 ? "Give 3 to 16 ends." : $"Use {string.Join(", ", SatinSteps.On(ends).Prepend(1))}."));
        }

        int first = Enumerable.Range(0, ends).First(c => (2 * c + 1 - step) % ends == 0);
        Drawdown shown = Drawdown.From(ends, ends, (pick, end) => (pick * step + first) % ends == end);
        Drawdown hidden = Drawdown.From(ends, ends, (pick, end) => !shown[ends - 1 - pick, end]);
        string name = step == 1 ? $"turned 1/{ends - 1} twill blocks" : $"turned {ends}-end satin blocks, step {step}";
        return new UnitWeave(name, Rule, shown, hidden);
    }

    /// <summary>One repeat of a profile.</summary>
    /// <param name="ends">Ends in a unit, 3 to 16.</param>
    /// <param name="step">1 for twill, or a step of <see cref="SatinSteps"/>.</param>
    /// <param name="profile">Blocks across and blocks shown in the weft-faced weave.</param>
    public static Weave Of(int ends, int step, Profile profile) => Unit(ends, step).Woven(profile) with
    {
        Notes = [$"Floats of {ends - 1}; each block takes {ends} shafts.", "Warp and weft of different colour or lustre let the blocks show."],
    };
}
