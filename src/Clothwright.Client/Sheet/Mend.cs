using Clothwright.Core.Workings;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Sheet;

/// <summary>A decision that settles a warning with one press.</summary>
/// <param name="TextKey">Key of the words on the button.</param>
/// <param name="Value">The figure it decides on; null if none.</param>
/// <param name="Mended">The worksheet with the decision taken.</param>
public sealed record Mend(string TextKey, IDerived? Value, Worksheet Mended);
