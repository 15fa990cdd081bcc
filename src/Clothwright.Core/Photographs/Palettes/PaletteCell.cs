using Clothwright.Core.Colours;

namespace Clothwright.Core.Photographs.Palettes;

/// <summary>A small square of the area looked at.</summary>
/// <param name="Light">Mean light of what can be told in it.</param>
/// <param name="Told">How many of its samples can be told.</param>
/// <param name="IsEven">Whether it lies inside one colour: its samples hardly differ.</param>
internal readonly record struct PaletteCell(LinearColour Light, int Told, bool IsEven);
