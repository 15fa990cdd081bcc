using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>One thing that a yarn without label can be.</summary>
/// <param name="Count">A count in which yarn is sold.</param>
/// <param name="Fibre">A fibre sold in it.</param>
/// <param name="Chance">How likely it is among all that the yarn can be, from 0 to 1.</param>
/// <param name="Deviation">Measured mass per length against that of the count, less 1.</param>
/// <param name="Sentence">The reading in words and figures.</param>
public sealed record YarnReading(YarnCount Count, Fibre Fibre, Ratio Chance, Ratio Deviation, string Sentence);
