using System.Runtime.InteropServices.JavaScript;

namespace Clothwright.Client;

/// <summary>What the page's script does: canvas, store of steps, focus.</summary>
public static partial class PageScript
{
    private const string Module = "clothwright";

    /// <summary>Loads the script; once, before anything else here is called.</summary>
    public static Task LoadAsync() => JSHost.ImportAsync(Module, "../js/clothwright.js");

    [JSImport("showCloth", Module)]
    internal static partial void ShowCloth(
        string canvas,
        [JSMarshalAs<JSType.MemoryView>] Span<byte> rows,
        int ends,
        int picks,
        [JSMarshalAs<JSType.MemoryView>] Span<double> looks,
        [JSMarshalAs<JSType.MemoryView>] Span<double> lustres,
        [JSMarshalAs<JSType.MemoryView>] Span<double> lights,
        [JSMarshalAs<JSType.MemoryView>] Span<double> stretches,
        [JSMarshalAs<JSType.MemoryView>] Span<double> endRound,
        [JSMarshalAs<JSType.MemoryView>] Span<double> pickRound,
        [JSMarshalAs<JSType.MemoryView>] Span<byte> sharedEnds,
        [JSMarshalAs<JSType.MemoryView>] Span<byte> sharedPicks,
        [JSMarshalAs<JSType.MemoryView>] Span<double> measures,
        bool customary);

    [JSImport("showWeave", Module)]
    internal static partial void ShowWeave(string canvas, [JSMarshalAs<JSType.MemoryView>] Span<byte> rows, int ends, int picks);

    [JSImport("viewCloth", Module)]
    internal static partial void ViewCloth(string canvas, string distance, bool back, double acrossDegrees, double alongDegrees);

    [JSImport("pixelsPerCentimetre", Module)]
    internal static partial double PixelsPerCentimetre();

    [JSImport("isMeasured", Module)]
    internal static partial bool IsScreenMeasured();

    [JSImport("keepPixelsPerCentimetre", Module)]
    internal static partial void KeepPixelsPerCentimetre(double pixels);

    [JSImport("openSteps", Module)]
    internal static partial Task<string> OpenStepsAsync(string sheet);

    [JSImport("readStep", Module)]
    internal static partial Task<string> ReadStepAsync(string sheet, int step);

    [JSImport("keepStep", Module)]
    internal static partial Task<bool> KeepStepAsync(string sheet, int step, string json, int revision);

    [JSImport("keepPlace", Module)]
    internal static partial Task<bool> KeepPlaceAsync(string sheet, int place, int revision);

    [JSImport("focusOn", Module)]
    internal static partial void FocusOn(string id);

    [JSImport("useTheme", Module)]
    internal static partial void UseTheme(string theme);

    [JSImport("theme", Module)]
    internal static partial string Theme();

    [JSImport("units", Module)]
    internal static partial string Units();

    [JSImport("keepUnits", Module)]
    internal static partial void KeepUnits(string units);

    [JSImport("languages", Module)]
    internal static partial string Languages();

    [JSImport("useLanguage", Module)]
    internal static partial void UseLanguage(string language);

    [JSImport("now", Module)]
    internal static partial double Now();

    [JSImport("afterPaint", Module)]
    internal static partial Task AfterPaintAsync();
}
