namespace Clothwright.Core.Workings;

/// <summary>How much one cause moves a number.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Movement">How far the number moves, in its base unit and with sign, when the cause moves by one standard deviation.</param>
public readonly record struct SpreadShare(Cause Cause, double Movement);
