using System.Collections.Immutable;
using Clothwright.Core.Wordings;

namespace Clothwright.Drawing.Figures;

/// <summary>A picture as a list of marks: laid out once, then written as SVG, PNG or into a page.</summary>
/// <param name="Width">Width in points.</param>
/// <param name="Height">Height in points.</param>
/// <param name="Title">What it shows, for readers who cannot see it.</param>
/// <param name="Marks">The marks, from the bottom up.</param>
internal sealed record Figure(float Width, float Height, string Title, ImmutableArray<Mark> Marks)
{
    /// <summary>The figure with its words in another language.</summary>
    /// <param name="wording">The language.</param>
    public Figure In(Wording wording) => this with { Title = wording.Tell(Title), Marks = [.. Marks.Select(m => m is LabelMark label ? label with { Text = wording.Tell(label.Text) } : m)] };
}
