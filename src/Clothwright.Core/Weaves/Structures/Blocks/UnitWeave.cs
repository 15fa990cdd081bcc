using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>A weave whose blocks are independent: each cell of a profile is replaced by one of two small cloths.</summary>
/// <remarks>Overshot, crackle and huck are not unit weaves: their blocks share threads or shafts.</remarks>
/// <param name="Name">Trade name.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Shown">The cloth of a cell that shows.</param>
/// <param name="Hidden">The cloth of a cell that does not; of the same size.</param>
public sealed record UnitWeave(string Name, Rule Rule, Drawdown Shown, Drawdown Hidden)
{
    /// <summary>The cloth of a whole profile.</summary>
    /// <param name="profile">The profile.</param>
    public Drawdown Substituted(Profile profile) => Drawdown.From(
        profile.Ends.Length * Shown.Ends,
        profile.Picks.Length * Shown.Picks,
        (pick, end) => (profile.Shows(pick / Shown.Picks, end / Shown.Ends) ? Shown : Hidden)[pick % Shown.Picks, end % Shown.Ends]);

    /// <summary>The draft of a whole profile, on the fewest shafts with one shaft an end.</summary>
    /// <param name="profile">The profile.</param>
    /// <exception cref="Quantities.InputProblemException">It would take more than 64 shafts.</exception>
    public Weave Woven(Profile profile)
    {
        // Each block and each different line once; threading and treadling then repeat their threads.
        int[] blocks = [.. profile.Ends.Distinct()];
        ShaftSet[] lines = [.. profile.Picks.Distinct()];
        Draft small = Weave.FromCloth(Name, Rule, Substituted(new Profile([.. blocks], [.. lines]))).Draft;
        return Weave.FromLifts(
            Name,
            Rule,
            [.. profile.Ends.SelectMany(b => Enumerable.Range(0, Shown.Ends).Select(e => small.Threading[Array.IndexOf(blocks, b) * Shown.Ends + e].Max))],
            [.. profile.Picks.SelectMany(l => Enumerable.Range(0, Shown.Picks).Select(p => small.Lift(Array.IndexOf(lines, l) * Shown.Picks + p)))]);
    }
}
