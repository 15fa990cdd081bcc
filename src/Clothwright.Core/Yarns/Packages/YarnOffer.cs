using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>How a yarn can be bought.</summary>
/// <param name="Form">Ball, skein, cone or tube.</param>
/// <param name="NetMass">Yarn in one package, at the trade's agreed moisture.</param>
/// <param name="Price">Price of one package.</param>
public sealed record YarnOffer(PackageForm Form, Mass NetMass, Money Price);
