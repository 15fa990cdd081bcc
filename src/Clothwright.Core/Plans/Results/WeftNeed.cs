using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>What one piece takes of one weft.</summary>
/// <param name="YarnId">The yarn.</param>
/// <param name="Picks">Picks it lies in.</param>
/// <param name="InCloth">Yarn that stays in the cloth.</param>
/// <param name="Waste">Yarn in joins, tails and on the shuttle.</param>
public sealed record WeftNeed(string YarnId, Derived<Whole> Picks, Derived<Length> InCloth, Derived<Length> Waste);
