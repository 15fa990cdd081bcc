using System.Runtime.InteropServices.JavaScript;

namespace Clothwright.Client.Photographs;

/// <summary>What the script of the counting page does: opens a photograph, shows it with marks and grid, hands out pixels.</summary>
internal static partial class PhotoScript
{
    private const string Module = "count";

    /// <summary>Loads the script; before anything else here is called.</summary>
    public static Task LoadAsync() => JSHost.ImportAsync(Module, "../js/count.js");

    /// <summary>Opens the photograph chosen in a file field and shows it.</summary>
    /// <returns>Width and height as shown, with a comma between; empty where it is no picture.</returns>
    [JSImport("openPhoto", Module)]
    public static partial Task<string> OpenAsync(string field, string canvas);

    /// <summary>Draws the photograph with marks, the square looked at, and the gaps found.</summary>
    [JSImport("showPhoto", Module)]
    public static partial void Show(
        string canvas,
        [JSMarshalAs<JSType.MemoryView>] Span<double> marks,
        [JSMarshalAs<JSType.MemoryView>] Span<double> square,
        [JSMarshalAs<JSType.MemoryView>] Span<double> ends,
        [JSMarshalAs<JSType.MemoryView>] Span<double> picks);

    /// <summary>Pixels as shown for one pixel of the page.</summary>
    [JSImport("shownScale", Module)]
    public static partial double ShownScale(string canvas);

    /// <summary>How many pixels of the photograph lie along one pixel as shown.</summary>
    [JSImport("fineness", Module)]
    public static partial double Fineness();

    /// <summary>The pixels of a square, red, green, blue, opacity, rows from the top.</summary>
    /// <param name="left">Left edge as shown.</param>
    /// <param name="top">Top edge as shown.</param>
    /// <param name="side">Side as shown.</param>
    /// <param name="pixels">Side wanted, pixels.</param>
    [JSImport("photoPixels", Module)]
    [return: JSMarshalAs<JSType.Array<JSType.Number>>]
    public static partial byte[] Pixels(double left, double top, double side, int pixels);
}
