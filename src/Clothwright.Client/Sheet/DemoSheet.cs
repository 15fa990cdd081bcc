using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Client.Sheet;

/// <summary>The worksheet of the demo studio that is built into the page.</summary>
internal static class DemoSheet
{
    /// <summary>Its id, in every demo studio.</summary>
    public const string Id = "reedbed-scarves";

    /// <summary>Two scarves on one warp.</summary>
    public static Worksheet Read()
    {
        using Stream stream = typeof(DemoSheet).Assembly.GetManifestResourceStream("reedbed-scarves.json")
            ?? throw new InvalidOperationException("The demonstration worksheet is not built in.");
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return WorksheetReader.Read(copy.ToArray()).Value;
    }
}
