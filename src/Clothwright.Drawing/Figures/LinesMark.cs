using System.Collections.Immutable;
using Clothwright.Core.Colours;

namespace Clothwright.Drawing.Figures;

/// <summary>Straight lines of one look, each a chain of points.</summary>
/// <param name="Name">What they show.</param>
/// <param name="Chains">The chains, in points.</param>
/// <param name="Colour">Colour.</param>
/// <param name="LineWidth">Width in points.</param>
/// <param name="Dashed">Whether the lines are dashed.</param>
internal sealed record LinesMark(
    string Name, ImmutableArray<ImmutableArray<(float X, float Y)>> Chains, SrgbColour Colour, float LineWidth = 0.5f, bool Dashed = false) : Mark(Name);
