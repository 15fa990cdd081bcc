using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;

namespace Clothwright.Client.Scales;

/// <summary>A sett that one of her reeds or heddles gives.</summary>
/// <param name="Reed">The reed, by name.</param>
/// <param name="Sley">Ends in each dent.</param>
/// <param name="Sett">The sett.</param>
public sealed record ReedStop(string Reed, Sley Sley, Sett Sett);
