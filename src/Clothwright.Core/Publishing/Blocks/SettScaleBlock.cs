using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>The sett on a scale: what serves the purpose, what reeds and heddles give, and how close the yarn can be set at most. All in one layer.</summary>
/// <param name="Purpose">What the cloth is for, in a word.</param>
/// <param name="Low">The most open sett that serves the purpose.</param>
/// <param name="High">The closest sett that serves the purpose.</param>
/// <param name="Advised">The sett advised.</param>
/// <param name="Chosen">The sett that is woven.</param>
/// <param name="Stops">What reeds and heddles at hand give.</param>
/// <param name="Limits">The closest setts, by method.</param>
public sealed record SettScaleBlock(
    string Purpose,
    Sett Low,
    Sett High,
    Sett Advised,
    Sett Chosen,
    ImmutableArray<SettStop> Stops,
    ImmutableArray<SettStop> Limits) : HandoutBlock;
