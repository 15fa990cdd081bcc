using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Client.Sheet;

/// <summary>The worksheet on which the page opens the first time.</summary>
internal static class DemoSheet
{
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
