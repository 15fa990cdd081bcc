using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>One kind of fibre with what the handbooks say of it. The list of all kinds is <c>FibreCatalogue</c>.</summary>
/// <param name="Id">Short name for files, for example <c>bamboo-viscose</c>.</param>
/// <param name="Name">Name for people, for example <c>viscose made from bamboo</c>.</param>
/// <param name="Density">Density of the solid fibre at 65 % relative humidity.</param>
/// <param name="Packing">Share of a usual spun yarn's volume that is fibre.</param>
/// <param name="CommercialRegainUnitedStates">Agreed moisture regain, United States (ASTM D1909).</param>
/// <param name="CommercialRegainEurope">Agreed moisture allowance, European Union (Regulation 1007/2011, Annex IX).</param>
/// <param name="RoomRegain">Actual regain at 65 % relative humidity.</param>
/// <param name="TenacityCentinewtonPerTex">Tenacity of single fibres, cN/tex.</param>
/// <param name="Elongation">Stretch at break of single fibres.</param>
/// <param name="WetStrength">Strength when wet as a share of dry strength.</param>
/// <param name="WashingShrinkage">Customary shrinkage of handwoven cloth in the first washing, each way.</param>
/// <param name="Felts">Whether it felts when rubbed wet.</param>
public sealed record Fibre(
    string Id,
    string Name,
    Derived<Density> Density,
    Derived<Ratio> Packing,
    Derived<Ratio> CommercialRegainUnitedStates,
    Derived<Ratio> CommercialRegainEurope,
    Derived<Ratio> RoomRegain,
    Derived<Ratio> TenacityCentinewtonPerTex,
    Derived<Ratio> Elongation,
    Derived<Ratio> WetStrength,
    Derived<Ratio> WashingShrinkage,
    bool Felts);
