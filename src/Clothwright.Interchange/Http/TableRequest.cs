using Clothwright.Interchange.Csv;

namespace Clothwright.Interchange.Http;

/// <summary>Someone's table of yarns, to be looked over or put on the shelf.</summary>
public sealed record TableRequest
{
    /// <summary>The table.</summary>
    public required string Text { get; init; }

    /// <summary>How it is to be read; null to find out.</summary>
    public YarnTableMapping? Mapping { get; init; }

    /// <summary>Whether yarns of the shelf give way to yarns of the same ids.</summary>
    public bool Replace { get; init; }
}
