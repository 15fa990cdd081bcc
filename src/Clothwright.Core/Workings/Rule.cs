namespace Clothwright.Core.Workings;

/// <summary>The rule that turns inputs into a number.</summary>
/// <param name="Name">The rule by its trade name, for example <c>Ashenhurst, ends plus intersections</c>.</param>
/// <param name="Formula">The formula as a weaver can follow it, for example <c>ends = sett × width in the reed</c>.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Rule(string Name, string Formula, Source Source);
