namespace Clothwright.Interchange.Http;

/// <summary>Yarn that is set aside for a worksheet.</summary>
public sealed record YarnReservation
{
    /// <summary>The yarn.</summary>
    public required string YarnId { get; init; }

    /// <summary>The worksheet.</summary>
    public required string WorksheetId { get; init; }

    /// <summary>Mass set aside, in grams at the agreed regain.</summary>
    public required double Grams { get; init; }

    /// <summary>What the weaver wants to remember of it.</summary>
    public string Note { get; init => field = value ?? ""; } = "";
}
