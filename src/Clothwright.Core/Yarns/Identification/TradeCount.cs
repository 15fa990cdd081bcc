using System.Collections.Immutable;

namespace Clothwright.Core.Yarns;

/// <summary>A count in which yarn for handweaving is commonly sold.</summary>
/// <param name="Count">The count.</param>
/// <param name="Fibres">Fibres sold in it.</param>
/// <param name="Usual">How often it is met, 1 seldom to 5 everywhere.</param>
public sealed record TradeCount(YarnCount Count, ImmutableArray<Fibre> Fibres, int Usual);
