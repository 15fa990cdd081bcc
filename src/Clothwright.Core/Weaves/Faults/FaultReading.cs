using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Faults;

/// <summary>One way to explain what is wrong with a cloth.</summary>
/// <param name="Steps">The slips, each with its sentence and mend, in the order in which they act.</param>
/// <param name="Left">Crossings this does not explain: still wrong, or changed though not marked as wrong.</param>
/// <param name="Made">The draft as it was in truth dressed and woven, by this reading.</param>
/// <remarks>Missing and doubled lines come first and are numbered as planned; the slips after them as they stand in the cloth.</remarks>
public sealed record FaultReading(ImmutableArray<FaultStep> Steps, int Left, Draft Made)
{
    /// <summary>The slips alone.</summary>
    public IEnumerable<Slip> Slips => Steps.Select(s => s.Slip);

    internal static FaultReading Of(Draft draft, IEnumerable<Slip> slips, int left, int picksWoven)
    {
        var steps = ImmutableArray.CreateBuilder<FaultStep>();
        foreach (Slip slip in slips)
        {
            steps.Add(new FaultStep(slip, slip.Describe(draft), slip.Mend(draft, picksWoven), slip.Oddity(draft)));
            draft = slip.Apply(draft);
        }

        return new FaultReading(steps.ToImmutable(), left, draft);
    }

    /// <inheritdoc />
    public override string ToString() => string.Join(' ', Steps.Select(s => s.What));
}
