using System.Text;

namespace Clothwright.Interchange.Wif;

/// <summary>Writes files of the open interchange standard WIF 1.1, strictly.</summary>
/// <remarks>
/// Sections stand in the order of the standard and each is listed in CONTENTS; lines end in CR LF; the text is UTF-8 without a
/// mark; colours are written on the scale 0 to 255; of sparse sections only the lines that say something are written.
/// </remarks>
public static class WifWriter
{
    /// <summary>Writes a document as the bytes of a file.</summary>
    /// <param name="document">The document.</param>
    /// <exception cref="ArgumentException">The document does not hold together, for example a thread numbered above the thread count.</exception>
    public static byte[] WriteBytes(WifDocument document) => Encoding.UTF8.GetBytes(Write(document));

    /// <summary>Writes a document as text.</summary>
    /// <inheritdoc cref="WriteBytes" path="/param" />
    /// <inheritdoc cref="WriteBytes" path="/exception" />
    public static string Write(WifDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (WifSoundness.FaultOf(document) is { } fault) throw new ArgumentException(fault, nameof(document));
        var pages = new WifPages();
        WriteHead(document, pages);
        WritePlans(document, pages);
        WriteThreads("WARP", document.Warp, pages);
        WriteThreads("WEFT", document.Weft, pages);
        foreach (WifExtraKey extra in document.ExtraKeys) pages.Key(extra.Section, extra.Key, extra.Value);
        return pages.Bind(document.KeptSections);
    }

    private static void WriteHead(WifDocument document, WifPages pages)
    {
        pages.Key(WifSectionNames.Wif, "Version", "1.1");
        pages.Key(WifSectionNames.Wif, "Date", "April 20, 1997");
        pages.Said(WifSectionNames.Wif, "Developers", document.Source.Developers);
        pages.Said(WifSectionNames.Wif, "Source Program", document.Source.Program);
        pages.Said(WifSectionNames.Wif, "Source Version", document.Source.ProgramVersion);
        if (document.Palette is { } palette)
        {
            pages.Key(WifSectionNames.ColorPalette, "Entries", WifNumbers.Written(palette.Entries));
            pages.Key(WifSectionNames.ColorPalette, "Form", "RGB");
            pages.Key(WifSectionNames.ColorPalette, "Range", "0,255");
            if (palette.Colours.Count > 0) pages.Lines(WifSectionNames.ColorTable, palette.Colours, static c => $"{c.Red},{c.Green},{c.Blue}");
        }

        WifText text = document.Text;
        pages.Said(WifSectionNames.Text, "Title", text.Title);
        pages.Said(WifSectionNames.Text, "Author", text.Author);
        pages.Said(WifSectionNames.Text, "Address", text.Address);
        pages.Said(WifSectionNames.Text, "EMail", text.EMail);
        pages.Said(WifSectionNames.Text, "Telephone", text.Telephone);
        pages.Said(WifSectionNames.Text, "FAX", text.Fax);
        if (document.Notes.Count > 0) pages.Lines(WifSectionNames.Notes, document.Notes, static note => note);
    }

    private static void WritePlans(WifDocument document, WifPages pages)
    {
        pages.Key(WifSectionNames.Weaving, "Shafts", WifNumbers.Written(document.Shafts));
        pages.Key(WifSectionNames.Weaving, "Treadles", WifNumbers.Written(document.Treadles));
        pages.Key(WifSectionNames.Weaving, "Rising Shed", document.RisingShed ? "true" : "false");
        pages.Plan(WifSectionNames.TieUp, document.TieUp);
        pages.Plan(WifSectionNames.Threading, document.Threading);
        pages.Plan(WifSectionNames.Treadling, document.Treadling);
        pages.Plan(WifSectionNames.LiftPlan, document.LiftPlan);
    }

    private static void WriteThreads(string name, WifThreads threads, WifPages pages)
    {
        pages.Key(name, "Threads", WifNumbers.Written(threads.Count));
        pages.Number(name, "Color", threads.Colour);
        pages.Said(name, "Symbol", threads.Symbol ?? "");
        pages.Number(name, "Symbol Number", threads.SymbolNumber);
        if (threads.Units is { } units) pages.Key(name, "Units", units.ToString());
        pages.Number(name, "Spacing", threads.Spacing);
        pages.Number(name, "Thickness", threads.Thickness);
        pages.Number(name, "Spacing Zoom", threads.SpacingZoom);
        pages.Number(name, "Thickness Zoom", threads.ThicknessZoom);
        pages.Number($"{name} SYMBOL PALETTE", "Entries", threads.SymbolEntries);
        pages.Lines($"{name} COLORS", threads.Colours, WifNumbers.Written);
        pages.Lines($"{name} SPACING", threads.Spacings, WifNumbers.Written);
        pages.Lines($"{name} SPACING ZOOM", threads.SpacingZooms, WifNumbers.Written);
        pages.Lines($"{name} THICKNESS", threads.Thicknesses, WifNumbers.Written);
        pages.Lines($"{name} THICKNESS ZOOM", threads.ThicknessZooms, WifNumbers.Written);
        pages.Lines($"{name} SYMBOLS", threads.Symbols, static symbol => symbol);
        pages.Lines($"{name} SYMBOL TABLE", threads.SymbolTable, static symbol => symbol);
    }
}
