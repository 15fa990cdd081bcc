namespace Clothwright.Drawing.Fonts;

/// <summary>Neighbouring glyphs of one face.</summary>
/// <param name="Face">The face.</param>
/// <param name="Glyphs">The glyphs.</param>
/// <param name="Signs">The sign that each glyph writes, as a Unicode code point.</param>
/// <param name="Positions">Left edge of each glyph, in points from the beginning of the line.</param>
internal sealed record GlyphRun(FontFace Face, ushort[] Glyphs, int[] Signs, float[] Positions);
