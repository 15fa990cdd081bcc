namespace Clothwright.Core.Weaves.Faults;

/// <summary>How a slip is put right.</summary>
/// <param name="Words">What to do, as instructions.</param>
/// <param name="PicksToUnweave">Picks that come out.</param>
/// <param name="EndsToMove">Ends that are drawn into another heddle or dent.</param>
public sealed record SlipMend(string Words, int PicksToUnweave, int EndsToMove);
