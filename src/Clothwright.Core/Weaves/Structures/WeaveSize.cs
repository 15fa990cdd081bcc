using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>How many ends and picks a draft is to have.</summary>
/// <param name="Ends">Ends, 1 to <see cref="DraftLimits.Ends"/>.</param>
/// <param name="Picks">Picks, 1 to <see cref="DraftLimits.Picks"/>.</param>
public readonly record struct WeaveSize(int Ends, int Picks)
{
    /// <summary>What is wrong with the size, or null.</summary>
    public InputProblem? Problem =>
        Ends is < 1 or > DraftLimits.Ends
            ? new InputProblem($"{Ends} ends cannot be drafted.", "ends", $"Give 1 to {DraftLimits.Ends} ends, for example 96.")
        : Picks is < 1 or > DraftLimits.Picks
            ? new InputProblem($"{Picks} picks cannot be drafted.", "picks", $"Give 1 to {DraftLimits.Picks} picks, for example 96.")
        : (long)Ends * Picks > DraftLimits.Crossings
            ? new InputProblem(
                $"{Ends} ends by {Picks} picks are more crossings than a draft can hold ({DraftLimits.Crossings}).", "picks", "Give fewer picks; the treadling goes on by repeats.")
        : null;
}
