namespace Clothwright.Storage.Rows;

/// <summary>One fibre of a yarn.</summary>
internal sealed class YarnFibreRow
{
    public string YarnId { get; set; } = "";

    public int Place { get; set; }

    public required string FibreId { get; set; }

    public double MassShare { get; set; }
}
