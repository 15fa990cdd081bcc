using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Floats of one kind that are too long for the purpose.</summary>
/// <param name="Longest">The longest of them.</param>
/// <param name="Length">Its length in the cloth.</param>
/// <param name="Times">How many floats of this kind in the drawdown are too long.</param>
/// <param name="Text">The warning as a sentence.</param>
public sealed record FloatWarning(ThreadFloat Longest, Derived<Length> Length, long Times, string Text);
