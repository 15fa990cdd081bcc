using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>How long floats may be for a purpose.</summary>
/// <param name="Purpose">What the cloth is for.</param>
/// <param name="Longest">Floats up to this length do well.</param>
/// <param name="Reason">What longer ones do.</param>
/// <param name="Caution">Where they can hurt someone, what to heed; empty otherwise.</param>
/// <param name="Source">Where the length comes from.</param>
public sealed record FloatRule(FloatPurpose Purpose, Length Longest, string Reason, string Caution, Source Source);
