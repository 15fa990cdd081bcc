using System.Collections.Immutable;

namespace Clothwright.Drawing.Figures;

/// <summary>A picture as a list of marks: laid out once, then written as SVG, PNG or into a page.</summary>
/// <param name="Width">Width in points.</param>
/// <param name="Height">Height in points.</param>
/// <param name="Title">What it shows, for readers who cannot see it.</param>
/// <param name="Marks">The marks, from the bottom up.</param>
internal sealed record Figure(float Width, float Height, string Title, ImmutableArray<Mark> Marks);
