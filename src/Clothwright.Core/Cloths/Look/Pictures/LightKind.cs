using Clothwright.Core.Cloths.Look.Light;

namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>A table of light to be made.</summary>
/// <param name="Direction">Which way the thread runs.</param>
/// <param name="Lustre">Number of its lustre.</param>
/// <param name="TwistRadians">Slant of its fibres.</param>
public readonly record struct LightKind(ThreadDirection Direction, int Lustre, double TwistRadians);
