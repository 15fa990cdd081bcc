namespace Clothwright.Core.Yarns;

/// <summary>Which moisture regain is meant: mass of water per mass of dry fibre.</summary>
public enum RegainBasis
{
    /// <summary>The regain agreed in the trade of the United States, ASTM D1909.</summary>
    UnitedStates,

    /// <summary>The allowance agreed in the European Union, Regulation 1007/2011, Annex IX.</summary>
    Europe,

    /// <summary>What the fibre really holds in air of 65 % relative humidity.</summary>
    Room,
}
