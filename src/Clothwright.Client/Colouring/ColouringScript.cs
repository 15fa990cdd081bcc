using System.Runtime.InteropServices.JavaScript;

namespace Clothwright.Client.Colouring;

/// <summary>What the script of the colours does; loaded when a picture is read first.</summary>
internal static partial class ColouringScript
{
    private const string Module = "colouring";

    private static Task? _loading;

    /// <summary>Loads the script, once.</summary>
    public static Task LoadAsync() => _loading ??= JSHost.ImportAsync(Module, "../js/colouring.js");

    /// <summary>Light across the picture that was chosen in a field, column by column from the left or row by row from the bottom: red, green and blue of each, linear from 0 to 1; none where nothing is chosen.</summary>
    /// <param name="field">Id of the field.</param>
    /// <param name="upward">Whether it is read from the bottom up.</param>
    public static async Task<double[]> ReadAsync(string field, bool upward)
    {
        await ReadPictureAsync(field, upward);
        return PictureLight();
    }

    [JSImport("readPicture", Module)]
    private static partial Task ReadPictureAsync(string field, bool upward);

    [JSImport("pictureLight", Module)]
    private static partial double[] PictureLight();
}
