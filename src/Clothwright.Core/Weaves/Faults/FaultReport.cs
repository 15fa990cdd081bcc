using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Faults;

/// <summary>What may have gone wrong.</summary>
/// <param name="Readings">The readings, likeliest first: fewest slips, then fewest crossings left, then the commonest slips; empty if nothing fits.</param>
/// <param name="Proved">Whether no reading has fewer slips and all with as few are listed.</param>
/// <param name="Steps">Drafts tried.</param>
public sealed record FaultReport(ImmutableArray<FaultReading> Readings, bool Proved, long Steps)
{
    /// <summary>Whether the cloth is as the draft wants it.</summary>
    public bool NothingWrong => !Readings.IsEmpty && Readings[0].Steps.IsEmpty && Readings[0].Left == 0;
}
