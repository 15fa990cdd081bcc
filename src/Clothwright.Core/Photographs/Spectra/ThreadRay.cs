namespace Clothwright.Core.Photographs.Spectra;

/// <summary>A spacing and direction at which threads may lie, and how far it stands out.</summary>
/// <param name="PerMillimetre">Threads in a millimetre.</param>
/// <param name="AngleRadians">How far the direction in which they are counted is turned from the picture's axis, clockwise as seen.</param>
/// <param name="Score">How far it stands out, both channels together, in nepers.</param>
/// <param name="ValleyScore">How far the gaps between threads stand out, in nepers.</param>
internal readonly record struct ThreadRay(double PerMillimetre, double AngleRadians, double Score, double ValleyScore);
