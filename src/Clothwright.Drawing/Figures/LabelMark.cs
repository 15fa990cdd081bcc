using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Figures;

/// <summary>A short text in a figure.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="Text">The text.</param>
/// <param name="X">Where it begins, is centred or ends, in points.</param>
/// <param name="Baseline">Baseline in points.</param>
/// <param name="Align">Which end of it stands at <paramref name="X"/>.</param>
/// <param name="Style">Face, size and colour.</param>
internal sealed record LabelMark(string Name, string Text, float X, float Baseline, LabelAlign Align, TextStyle Style) : Mark(Name);
