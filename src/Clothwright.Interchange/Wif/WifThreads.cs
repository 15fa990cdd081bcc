namespace Clothwright.Interchange.Wif;

/// <summary>One system of threads: section WARP or WEFT with the sections that describe its threads one by one.</summary>
public sealed record WifThreads
{
    /// <summary>How many threads.</summary>
    public int Count { get; init; }

    /// <summary>Palette number of a thread not listed in <see cref="Colours"/>; null if not said.</summary>
    public int? Colour { get; init; }

    /// <summary>Symbol of a thread not listed in <see cref="Symbols"/>, as written, quotation marks and all; null if not said.</summary>
    public string? Symbol { get; init; }

    /// <summary>Number of that symbol in the symbol palette; null if not said.</summary>
    public int? SymbolNumber { get; init; }

    /// <summary>Unit of spacings and thicknesses; null if not said (decipoints are then meant).</summary>
    public WifUnits? Units { get; init; }

    /// <summary>Centre-to-centre distance of a thread not listed in <see cref="Spacings"/>, in <see cref="Units"/>; null if not said.</summary>
    public double? Spacing { get; init; }

    /// <summary>Diameter of a thread not listed in <see cref="Thicknesses"/>, in <see cref="Units"/>; null if not said.</summary>
    public double? Thickness { get; init; }

    /// <summary>Screen magnification of spacings; null if not said.</summary>
    public int? SpacingZoom { get; init; }

    /// <summary>Screen magnification of thicknesses; null if not said.</summary>
    public int? ThicknessZoom { get; init; }

    /// <summary>Palette number by thread.</summary>
    public WifNumbered<int> Colours { get; init; } = WifNumbered.None<int>();

    /// <summary>Centre-to-centre distance by thread, in <see cref="Units"/>.</summary>
    public WifNumbered<double> Spacings { get; init; } = WifNumbered.None<double>();

    /// <summary>Screen magnification of the spacing by thread.</summary>
    public WifNumbered<int> SpacingZooms { get; init; } = WifNumbered.None<int>();

    /// <summary>Diameter by thread, in <see cref="Units"/>.</summary>
    public WifNumbered<double> Thicknesses { get; init; } = WifNumbered.None<double>();

    /// <summary>Screen magnification of the thickness by thread.</summary>
    public WifNumbered<int> ThicknessZooms { get; init; } = WifNumbered.None<int>();

    /// <summary>Symbol by thread, as written.</summary>
    public WifNumbered<string> Symbols { get; init; } = WifNumbered.None<string>();

    /// <summary>Declared entries of the symbol palette; null if the file has none.</summary>
    public int? SymbolEntries { get; init; }

    /// <summary>The symbol palette: symbol by number, as written.</summary>
    public WifNumbered<string> SymbolTable { get; init; } = WifNumbered.None<string>();
}
