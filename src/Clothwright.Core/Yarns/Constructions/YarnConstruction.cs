namespace Clothwright.Core.Yarns;

/// <summary>How a yarn is made, as far as it changes sett, handling or cautions.</summary>
public enum YarnConstruction
{
    /// <summary>Spun from staple fibre and plied.</summary>
    Spun,

    /// <summary>Spun from staple fibre, not plied.</summary>
    Singles,

    /// <summary>Reeled from the cocoon: continuous natural filament.</summary>
    Reeled,

    /// <summary>Continuous man-made filament.</summary>
    Filament,

    /// <summary>Pile held between core threads.</summary>
    Chenille,

    /// <summary>Flat woven or knitted tape.</summary>
    Ribbon,

    /// <summary>Loops on a core, held by a binder.</summary>
    Boucle,

    /// <summary>One single thick filament, for example metallised film.</summary>
    Monofilament,

    /// <summary>Spun and plied softly and full of air, as yarn for hand knitting.</summary>
    Soft,
}
