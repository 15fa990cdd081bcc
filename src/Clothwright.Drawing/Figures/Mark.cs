namespace Clothwright.Drawing.Figures;

/// <summary>One thing in a figure.</summary>
/// <param name="Name">What it shows, for example <c>warp</c>; several marks may share it. Lower-case letters and hyphens.</param>
internal abstract record Mark(string Name);
