using Clothwright.Core.Quantities;

namespace Clothwright.Core.Looms;

/// <summary>A reed of a shaft loom.</summary>
/// <param name="Name">As she calls it, for example <c>10-dent</c> or <c>40/10</c>.</param>
/// <param name="Dents">Dents per width.</param>
public sealed record Reed(string Name, Sett Dents);
