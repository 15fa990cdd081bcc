using System.Runtime.InteropServices.JavaScript;

namespace Clothwright.Client.Shelf;

/// <summary>What the script of shelf and bench does; loaded when one of them is opened first.</summary>
public static partial class ShelfScript
{
    private const string Module = "shelf";

    private static Task? _loading;

    /// <summary>Loads the script, once.</summary>
    public static Task LoadAsync() => _loading ??= JSHost.ImportAsync(Module, "../js/shelf.js");

    [JSImport("askStudio", Module)]
    internal static partial Task<string> AskAsync(string method, string address, string body, string version);

    [JSImport("keepSeen", Module)]
    internal static partial void KeepSeen(string name, string text);

    [JSImport("seen", Module)]
    internal static partial string Seen(string name);

    [JSImport("seenAt", Module)]
    internal static partial string SeenAt(string name);

    [JSImport("sendPhoto", Module)]
    internal static partial Task<string> SendPhotoAsync(string field, string address);

    [JSImport("readText", Module)]
    internal static partial Task<string> ReadTextAsync(string field);

    [JSImport("lightAt", Module)]
    internal static partial string LightAt(string photo, double across, double down);

    [JSImport("smallSize", Module)]
    internal static partial string SmallSize(string photo, int most);

    [JSImport("smallPixels", Module)]
    internal static partial byte[] SmallPixels();

    [JSImport("placeIn", Module)]
    internal static partial string PlaceIn(string photo, double x, double y);
}
