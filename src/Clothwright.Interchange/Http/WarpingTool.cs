namespace Clothwright.Interchange.Http;

/// <summary>A tool that warps are wound on.</summary>
public sealed record WarpingTool
{
    /// <summary>Short name, unique on the bench.</summary>
    public required string Id { get; init; }

    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Board, mill, pegs or sectional beam.</summary>
    public required WarpingToolKind Kind { get; init; }

    /// <summary>The longest warp it takes, in metres; null if not measured.</summary>
    public double? LongestWarpMetres { get; init; }

    /// <summary>Once round a mill, or once across a board from peg to peg, in centimetres; null if not measured.</summary>
    public double? TurnCentimetres { get; init; }

    /// <summary>Width of one section of a sectional beam, in centimetres; null for other tools.</summary>
    public double? SectionCentimetres { get; init; }
}
