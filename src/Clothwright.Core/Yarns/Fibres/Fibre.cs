using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>One kind of fibre with what the handbooks say of it. The list of all kinds is <see cref="FibreCatalogue"/>.</summary>
/// <param name="Id">Short name for files, for example <c>bamboo-viscose</c>.</param>
/// <param name="Name">Name for people, for example <c>viscose made from bamboo</c>.</param>
/// <param name="Density">Density of the solid fibre at 65 % relative humidity.</param>
/// <param name="Packing">Share of a usual spun yarn's volume that is fibre: the middle of the handbooks' range.</param>
/// <param name="CommercialRegainUnitedStates">Agreed moisture regain, United States (ASTM D1909).</param>
/// <param name="CommercialRegainEurope">Agreed moisture allowance, European Union (Regulation 1007/2011, Annex IX).</param>
/// <param name="RoomRegain">Actual regain at 65 % relative humidity.</param>
/// <param name="TenacityCentinewtonPerTex">Tenacity of single fibres, cN/tex.</param>
/// <param name="Elongation">Stretch at break of single fibres.</param>
/// <param name="WetStrength">Strength when wet as a share of dry strength.</param>
/// <param name="WashingShrinkage">Customary shrinkage of handwoven cloth in the first washing, each way.</param>
/// <param name="Felts">Whether it felts when rubbed wet, enough to mind in washing.</param>
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
    bool Felts)
{
    /// <summary>Other names by which it is found, lower case.</summary>
    public ImmutableArray<string> Synonyms { get; init; } = [];

    /// <summary>What it is like in fire and in the hand.</summary>
    public FibreFamily Family { get; init; }

    /// <summary>Density of the solid fibre, bone-dry, where a handbook gives it.</summary>
    public Derived<Density>? DryDensity { get; init; }

    /// <summary>Lowest packing of the handbooks' range: a soft, lofty yarn.</summary>
    public Ratio PackingLow { get; init; } = Packing.Value;

    /// <summary>Highest packing of the handbooks' range: a hard-twisted, smooth yarn.</summary>
    public Ratio PackingHigh { get; init; } = Packing.Value;

    /// <summary>Class by which <see cref="WashingShrinkage"/> is taken where charts give no figure of the fibre's own.</summary>
    public RelaxationClass Relaxation { get; init; }

    /// <summary>How readily it felts.</summary>
    public FeltingClass Felting { get; init; }

    /// <summary>What to know at the loom and the wash basin, one sentence.</summary>
    public string Note { get; init; } = "";

    /// <summary>Mass per volume of a usual yarn of this fibre, air and all.</summary>
    public Derived<Density> BulkDensity => FibreBlend.Pure(this).BulkDensity;
}
