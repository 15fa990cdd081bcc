namespace Clothwright.Interchange.Wif;

internal sealed partial class WifAssembly
{
    private WifThreads ReadThreads(WifSectionReader section, int count, int? colour, WifColourReader colours)
    {
        string name = section.Name;
        var threads = new WifThreads
        {
            Count = count,
            Colour = colour,
            Symbol = section.WordsOrNone("Symbol"),
            SymbolNumber = section.Whole("Symbol Number"),
            Units = ReadUnits(section),
            Spacing = section.Real("Spacing"),
            Thickness = section.Real("Thickness"),
            SpacingZoom = section.Whole("Spacing Zoom"),
            ThicknessZoom = section.Whole("Thickness Zoom"),
            Colours = colours.ReadNumbers($"{name} COLORS", count),
            Spacings = _numbered.Reals($"{name} SPACING", count),
            SpacingZooms = _numbered.Wholes($"{name} SPACING ZOOM", count),
            Thicknesses = _numbered.Reals($"{name} THICKNESS", count),
            ThicknessZooms = _numbered.Wholes($"{name} THICKNESS ZOOM", count),
            Symbols = _numbered.Words($"{name} SYMBOLS", count),
            SymbolTable = _numbered.Words($"{name} SYMBOL TABLE", _limits.MaxPaletteEntries),
        };
        Finish(section);

        WifSectionReader palette = Section($"{name} SYMBOL PALETTE");
        int? entries = palette.Count("Entries", _limits.MaxPaletteEntries, "symbols");
        Finish(palette);
        bool any = palette.IsPresent || threads.SymbolTable.Count > 0;
        return threads with { SymbolEntries = any ? Math.Max(entries ?? 0, threads.SymbolTable.Highest) : null };
    }

    private WifUnits? ReadUnits(WifSectionReader section)
    {
        if (section.Find("Units") is not { ValueLength: > 0 } entry) return null;
        string word = WifNumbers.WithoutComment(entry.Value(_sections.Text)).ToString();
        if (Enum.TryParse(word, ignoreCase: true, out WifUnits units) && !WifNumbers.TryWhole(word, out _)) return units;
        WifUnits? meant = word.ToUpperInvariant() switch
        {
            "CENTIMETRES" or "CENTIMETER" or "CENTIMETRE" or "CM" => WifUnits.Centimeters,
            "INCH" or "IN" or "IN." or "\"" => WifUnits.Inches,
            "DECIPOINT" or "DECI-POINTS" => WifUnits.Decipoints,
            _ => null,
        };
        if (meant is null) section.KeepAsWritten("Units");
        section.Warn(entry, meant is null
            ? $"\"{WifSections.Shortened(word)}\" is none of Decipoints, Inches, Centimeters; decipoints are assumed."
            : $"\"{WifSections.Shortened(word)}\" is read as {meant}.");
        return meant;
    }

    // One system names its unit and the other does not: the same unit is meant.
    private WifThreads ShareUnits(WifThreads from, WifThreads to, string fromName, string toName)
    {
        bool measured = to.Spacing is not null || to.Thickness is not null || to.Spacings.Count > 0 || to.Thicknesses.Count > 0;
        bool misspelt = _extras.Exists(extra => extra.Section == toName && WifSectionNames.Canonical(extra.Key) == "UNITS");
        if (to.Units is not null || from.Units is null || !measured || misspelt) return to;
        _warnings.Add(toName, "Units", _sections.Find(toName)?.Line ?? 0, $"No unit is named; that of {fromName} is taken, {from.Units}.");
        return to with { Units = from.Units };
    }
}
