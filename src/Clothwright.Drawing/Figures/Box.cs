namespace Clothwright.Drawing.Figures;

/// <summary>A rectangle, in points, y growing downwards.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
internal readonly record struct Box(float X, float Y, float Width, float Height);
