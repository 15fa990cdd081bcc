using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Sheet;

/// <summary>A weave as it was drawn last, reckoned once for everything that shows it.</summary>
/// <param name="Decision">The decision that it was made from.</param>
/// <param name="Weave">The weave.</param>
/// <param name="Cloth">Its cloth, one repeat.</param>
internal sealed record DrawnWeave(WeaveDecision Decision, Weave Weave, Drawdown Cloth);
