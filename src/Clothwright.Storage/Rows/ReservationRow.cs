namespace Clothwright.Storage.Rows;

/// <summary>Yarn set aside for a worksheet.</summary>
internal sealed class ReservationRow
{
    public required string YarnId { get; set; }

    public required string WorksheetId { get; set; }

    public int Version { get; set; }

    public double Kilograms { get; set; }

    public string Note { get; set; } = "";
}
