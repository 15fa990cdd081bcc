namespace Clothwright.Storage.Rows;

/// <summary>One package of a yarn.</summary>
internal sealed class PackageRow
{
    public string YarnId { get; set; } = "";

    public int Place { get; set; }

    public required string Form { get; set; }

    public double GrossKilograms { get; set; }

    public double TareKilograms { get; set; }

    public string? Lot { get; set; }

    public double? RelativeHumidity { get; set; }

    /// <summary>How its mass is known; null in rows of earlier versions, which hold what was weighed.</summary>
    public string? Basis { get; set; }
}
