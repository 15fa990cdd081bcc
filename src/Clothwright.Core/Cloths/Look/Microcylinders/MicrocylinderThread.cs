using System.Collections.Immutable;
using Clothwright.Core.Colours;

namespace Clothwright.Core.Cloths.Look.Microcylinders;

/// <summary>One set of threads of a cloth as fine cylinders.</summary>
/// <param name="RefractiveIndex">Index of the fibre.</param>
/// <param name="Albedo">Colour of the body light.</param>
/// <param name="Evenness">Share of the body light that goes every way alike.</param>
/// <param name="GlossWidthDegrees">Standard deviation of the gloss over the half angle.</param>
/// <param name="BodyWidthDegrees">Standard deviation of the body light.</param>
/// <param name="Share">Share of the area.</param>
/// <param name="TangentDegrees">How its threads rise along their way: angles of equal weight.</param>
public sealed record MicrocylinderThread(
    double RefractiveIndex,
    LinearColour Albedo,
    double Evenness,
    double GlossWidthDegrees,
    double BodyWidthDegrees,
    double Share,
    ImmutableArray<double> TangentDegrees);
