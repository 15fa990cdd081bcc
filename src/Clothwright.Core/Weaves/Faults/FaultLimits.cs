using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Faults;

/// <summary>How far the fault finder looks.</summary>
/// <param name="MostSlips">The most slips in one reading, 1 to 6.</param>
/// <param name="Steps">Drafts tried before it gives up, above 0; a limit of steps, so the same question has the same answer.</param>
public sealed record FaultLimits(int MostSlips = 3, long Steps = 200_000)
{
    /// <summary>The first limit that cannot be used, or null.</summary>
    public InputProblem? Problem() => this switch
    {
        { MostSlips: < 1 or > 6 } => new InputProblem(
            $"Readings with {MostSlips} slips are not searched.", "mostSlips", "Give 1 to 6, for example 3."),
        { Steps: < 1 } => new InputProblem($"{Steps} steps are no search.", "steps", "Give a number above 0, for example 200000."),
        _ => null,
    };
}
