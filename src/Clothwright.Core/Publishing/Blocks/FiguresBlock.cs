using System.Collections.Immutable;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>Key figures, each in metric and in customary units.</summary>
/// <param name="Figures">The figures in reading order.</param>
public sealed record FiguresBlock(ImmutableArray<HandoutFigure> Figures) : HandoutBlock;
