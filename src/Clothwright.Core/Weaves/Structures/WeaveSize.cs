using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>How many ends and picks a draft is to have.</summary>
/// <param name="Ends">Ends, 1 to <see cref="MostEnds"/>.</param>
/// <param name="Picks">Picks, 1 to <see cref="MostPicks"/>.</param>
public readonly record struct WeaveSize(int Ends, int Picks)
{
    /// <summary>The most ends a draft can have: three metres at 33 to the centimetre.</summary>
    public const int MostEnds = 10_000;

    /// <summary>The most picks a draft can have: ten metres at 20 to the centimetre.</summary>
    public const int MostPicks = 20_000;

    /// <summary>What is wrong with the size, or null.</summary>
    public InputProblem? Problem =>
        Ends is < 1 or > MostEnds
            ? new InputProblem($"{Ends} ends cannot be drafted.", "ends", $"Give 1 to {MostEnds} ends, for example 96.")
        : Picks is < 1 or > MostPicks
            ? new InputProblem($"{Picks} picks cannot be drafted.", "picks", $"Give 1 to {MostPicks} picks, for example 96.")
        : null;
}
