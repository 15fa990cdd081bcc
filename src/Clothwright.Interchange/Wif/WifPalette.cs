using Clothwright.Core.Colours;

namespace Clothwright.Interchange.Wif;

/// <summary>The colours of a file: sections COLOR PALETTE and COLOR TABLE, brought to 8 bits.</summary>
/// <param name="Entries">How many colours are declared, 0 or more; at least the highest number in <paramref name="Colours"/>.</param>
/// <param name="Colours">The colours by number.</param>
public sealed record WifPalette(int Entries, WifNumbered<SrgbColour> Colours);
