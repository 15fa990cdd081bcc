namespace Clothwright.Core.Yarns;

/// <summary>A system in which the thickness of yarn is numbered. What each means stands in <see cref="CountSystems"/>.</summary>
public enum CountSystem
{
    /// <summary>Grams in 1000 m.</summary>
    Tex,

    /// <summary>Grams in 10,000 m.</summary>
    Decitex,

    /// <summary>Grams in 9000 m.</summary>
    Denier,

    /// <summary>Kilometres in a kilogram; metric spun silk is numbered the same way.</summary>
    Metric,

    /// <summary>Hanks of 840 yd in a pound.</summary>
    Cotton,

    /// <summary>Hanks of 560 yd in a pound.</summary>
    Worsted,

    /// <summary>Runs of 1600 yd in a pound.</summary>
    WoollenRun,

    /// <summary>Cuts of 300 yd in a pound.</summary>
    WoollenCut,

    /// <summary>Leas of 300 yd in a pound.</summary>
    Linen,

    /// <summary>Hanks of 840 yd of the finished yarn in a pound; the number is not divided by the plies.</summary>
    SilkEnglish,

    /// <summary>Yards in a pound.</summary>
    YardsPerPound,

    /// <summary>Metres in a kilogram.</summary>
    MetresPerKilogram,

    /// <summary>Metres in 100 g.</summary>
    MetresPer100Grams,

    /// <summary>Metres in 50 g.</summary>
    MetresPer50Grams,

    /// <summary>Yards in 50 g.</summary>
    YardsPer50Grams,

    /// <summary>Yards in an ounce.</summary>
    YardsPerOunce,

    /// <summary>Skeins of 256 yd in a pound (1536 yd in 6 lb).</summary>
    YorkshireSkein,

    /// <summary>Cuts of 300 yd in 24 oz.</summary>
    GalashielsCut,

    /// <summary>Snaps of 320 yd in a pound.</summary>
    WestOfEngland,

    /// <summary>Kilometres in 500 g.</summary>
    French,

    /// <summary>Cuts of 100 yd in a pound.</summary>
    GlassCut,

    /// <summary>Pounds in a spyndle of 14,400 yd.</summary>
    JuteSpyndle,

    /// <summary>Grains in 120 yd.</summary>
    Grain,

    /// <summary>Drams in 1000 yd.</summary>
    DramSilk,

    /// <summary>Old thrown-silk deniers (533 1/3 to the ounce) in a skein of 520 yd.</summary>
    OldDenier,
}
