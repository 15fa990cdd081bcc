using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>A figure of the plan under a name that does not change.</summary>
/// <param name="Name">For example <c>warpLength</c>, <c>pieces[0].picks</c>, <c>yarns[tide-blue].mass</c>.</param>
/// <param name="Value">The figure with its working.</param>
public sealed record Figure(string Name, IDerived Value);
