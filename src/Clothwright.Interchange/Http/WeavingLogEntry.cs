namespace Clothwright.Interchange.Http;

/// <summary>One sitting at the loom.</summary>
/// <remarks>The generated reader sets every field, those that were not sent to null: hence the fields that fall back to nothing said.</remarks>
public sealed record WeavingLogEntry
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>The worksheet that is being woven.</summary>
    public required string WorksheetId { get; init; }

    /// <summary>When it began.</summary>
    public required DateTimeOffset Begun { get; init; }

    /// <summary>Time spent, in minutes; null if not noted.</summary>
    public double? Minutes { get; init; }

    /// <summary>What was done: winding, threading, weaving and so on, in the weaver's words.</summary>
    public string Work { get; init => field = value ?? ""; } = "";

    /// <summary>The piece on the loom, from 0 in the order of weaving; null while dressing.</summary>
    public int? PieceIndex { get; init; }

    /// <summary>Picks woven in this sitting.</summary>
    public int Picks { get; init; }

    /// <summary>What the weaver wants to remember of it.</summary>
    public string Note { get; init => field = value ?? ""; } = "";
}
