using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>An honest guess of the hours at work.</summary>
/// <param name="Steps">Hours by step, in the order of the work; the label of each names the step.</param>
/// <param name="Total">All steps together.</param>
public sealed record WorkEstimate(ImmutableArray<Derived<WorkTime>> Steps, Derived<WorkTime> Total);
