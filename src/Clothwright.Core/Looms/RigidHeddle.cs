using Clothwright.Core.Quantities;

namespace Clothwright.Core.Looms;

/// <summary>A rigid heddle: eyes and slots in turn.</summary>
/// <param name="Name">As she calls it, for example <c>7.5-dent</c>.</param>
/// <param name="Spaces">Eyes and slots per width together: the sett at one end in each.</param>
/// <param name="Count">How many of these she owns.</param>
public sealed record RigidHeddle(string Name, Sett Spaces, int Count);
