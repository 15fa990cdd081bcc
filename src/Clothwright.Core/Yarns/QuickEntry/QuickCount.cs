using System.Collections.Immutable;

namespace Clothwright.Core.Yarns;

/// <summary>A count that stood in free words.</summary>
/// <param name="From">The words, for example <c>8/2</c>.</param>
/// <param name="Readings">Every system in which they can be read, those most usual first; at least one.</param>
/// <param name="Taken">The reading that was taken; null where it has to be asked.</param>
/// <param name="Ground">Why.</param>
public sealed record QuickCount(string From, ImmutableArray<YarnCount> Readings, YarnCount? Taken, QuickCountGround Ground);
