namespace Clothwright.Core.Photographs;

/// <summary>How much work is put into a count.</summary>
/// <param name="Samples">Samples along the side of the views whose spectra are taken: a power of two.</param>
/// <param name="Strips">Strips in which the gaps are counted at the end.</param>
/// <param name="StripRows">The most rows of samples averaged in a strip.</param>
public sealed record CountDetail(int Samples, int Strips, int StripRows)
{
    /// <summary>For a program that has a second: 512 samples, seven strips.</summary>
    public static CountDetail Full { get; } = new(512, 7, 48);

    /// <summary>For a page whose code is interpreted: 256 samples, five strips.</summary>
    public static CountDetail Quick { get; } = new(256, 5, 16);
}
