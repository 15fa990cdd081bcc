using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Block substitution with any two cloths, named or one's own: one where a block of the profile shows, the other where it does not.</summary>
public static class BlockSubstitution
{
    /// <summary>The most threads of a unit each way.</summary>
    public const int MostThreads = 64;

    /// <summary>Each cell of the profile is replaced by a cloth.</summary>
    public static Rule Rule { get; } = new(
        "block substitution",
        "each cell of the profile is replaced: by the unit where its block shows, by the other where it does not; units of unlike size are repeated to their least common size; a shaft for each different end",
        Source.Derivation);

    /// <summary>The two cloths at one size.</summary>
    /// <param name="shown">Where a block shows.</param>
    /// <param name="hidden">Where it does not.</param>
    /// <exception cref="InputProblemException">The common size is more than <see cref="MostThreads"/> threads.</exception>
    public static UnitWeave Unit(Drawdown shown, Drawdown hidden)
    {
        ArgumentNullException.ThrowIfNull(shown);
        ArgumentNullException.ThrowIfNull(hidden);
        long ends = Common(shown.Ends, hidden.Ends), picks = Common(shown.Picks, hidden.Picks);
        if (ends > MostThreads || picks > MostThreads)
        {
            throw new InputProblemException(new InputProblem(
                $"Units of {shown.Ends} × {shown.Picks} and {hidden.Ends} × {hidden.Picks} threads come together after {ends} ends and {picks} picks.",
                "unit",
                $"Take units whose sizes go into each other, {MostThreads} threads at most, for example 4 × 4 and 4 × 4."));
        }

        return new UnitWeave("block substitution", Rule, shown.Repeated((int)ends, (int)picks), hidden.Repeated((int)ends, (int)picks));
    }

    /// <summary>One repeat of a profile.</summary>
    /// <param name="shown">The cloth where a block shows.</param>
    /// <param name="hidden">The cloth where it does not.</param>
    /// <param name="profile">Blocks across and blocks that show on each line.</param>
    /// <exception cref="InputProblemException">The units are too large together, or it would take more than 64 shafts.</exception>
    public static Weave Of(Drawdown shown, Drawdown hidden, Profile profile) =>
        Unit(shown, hidden).Woven(profile).Noting("Where blocks meet, floats of the two cloths may run together: check the draft for long floats.");

    private static long Common(int a, int b) => (long)a / Divisors.Greatest(a, b) * b;
}
