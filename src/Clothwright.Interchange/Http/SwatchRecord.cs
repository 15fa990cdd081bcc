using System.Collections.Immutable;

namespace Clothwright.Interchange.Http;

/// <summary>A sample and its measurements. What was not measured is null.</summary>
/// <remarks>The generated reader sets every field, those that were not sent to null: hence the fields that fall back to nothing said.</remarks>
public sealed record SwatchRecord
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>The worksheet it was woven for; null for a sample of its own.</summary>
    public string? WorksheetId { get; init; }

    /// <summary>The day it was measured.</summary>
    public DateOnly? MeasuredOn { get; init; }

    /// <summary>Yarns of the warp, by their ids on the shelf.</summary>
    public ImmutableArray<string> WarpYarnIds { get; init => field = value.IsDefault ? [] : value; } = [];

    /// <summary>Yarns of the weft, by their ids on the shelf.</summary>
    public ImmutableArray<string> WeftYarnIds { get; init => field = value.IsDefault ? [] : value; } = [];

    /// <summary>The weave by name; empty if not noted.</summary>
    public string Weave { get; init => field = value ?? ""; } = "";

    /// <summary>Ends in a centimetre of the reed.</summary>
    public double? EndsPerCentimetre { get; init; }

    /// <summary>Picks in a centimetre as woven, the warp under tension.</summary>
    public double? PicksPerCentimetre { get; init; }

    /// <summary>Width in the reed.</summary>
    public double? ReedWidthCentimetres { get; init; }

    /// <summary>Length as woven, the warp under tension.</summary>
    public double? WovenLengthCentimetres { get; init; }

    /// <summary>Width off the loom, at rest.</summary>
    public double? OffLoomWidthCentimetres { get; init; }

    /// <summary>Length off the loom, at rest.</summary>
    public double? OffLoomLengthCentimetres { get; init; }

    /// <summary>Width after finishing.</summary>
    public double? FinishedWidthCentimetres { get; init; }

    /// <summary>Length after finishing.</summary>
    public double? FinishedLengthCentimetres { get; init; }

    /// <summary>Mass after finishing, without fringes.</summary>
    public double? FinishedGrams { get; init; }

    /// <summary>Thickness after finishing.</summary>
    public double? ThicknessMillimetres { get; init; }

    /// <summary>How it was washed and pressed.</summary>
    public string Finishing { get; init => field = value ?? ""; } = "";

    /// <summary>What the weaver wants to remember of it.</summary>
    public string Note { get; init => field = value ?? ""; } = "";
}
