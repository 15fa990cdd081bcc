using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Joining;

namespace Clothwright.Client.Saving;

/// <summary>The same part of the worksheet was changed here and elsewhere: which is to hold?</summary>
/// <param name="Origin">What both were made from; null where it is not known.</param>
/// <param name="Join">The two sides.</param>
/// <param name="Arrived">Their document as it came.</param>
/// <param name="Version">Its version in the studio; null where it came from another tab.</param>
public sealed record SheetQuestion(Worksheet? Origin, WorksheetJoin Join, string Arrived, int? Version)
{
    /// <summary>The question after another step here.</summary>
    /// <param name="mine">The worksheet with the step.</param>
    public SheetQuestion After(Worksheet mine) => this with { Join = WorksheetJoin.Of(Origin, mine, Join.Theirs) };
}
