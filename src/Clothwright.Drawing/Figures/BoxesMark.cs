using System.Collections.Immutable;
using Clothwright.Core.Colours;

namespace Clothwright.Drawing.Figures;

/// <summary>Rectangles of one look.</summary>
/// <param name="Name">What they show.</param>
/// <param name="Boxes">The rectangles.</param>
/// <param name="Fill">Colour of the inside; null for none.</param>
/// <param name="Stroke">Colour of the outline; null for none.</param>
/// <param name="StrokeWidth">Width of the outline in points.</param>
internal sealed record BoxesMark(string Name, ImmutableArray<Box> Boxes, SrgbColour? Fill, SrgbColour? Stroke = null, float StrokeWidth = 0.5f)
    : Mark(Name);
