namespace Clothwright.Interchange.Wif;

/// <summary>Who wrote a file: section WIF.</summary>
public sealed record WifSource
{
    /// <summary>The program that wrote the file; empty if not said.</summary>
    public string Program { get; init; } = "";

    /// <summary>Its version; empty if not said.</summary>
    public string ProgramVersion { get; init; } = "";

    /// <summary>The standard's contact line, as the file had it; empty if it had none.</summary>
    public string Developers { get; init; } = "";
}
