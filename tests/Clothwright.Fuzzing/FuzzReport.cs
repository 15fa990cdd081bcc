namespace Clothwright.Fuzzing;

/// <summary>What came of a run.</summary>
/// <param name="Name">What was read.</param>
/// <param name="Seed">Seed of the run.</param>
/// <param name="Files">Files tried.</param>
/// <param name="Read">Files read.</param>
/// <param name="Refused">Files refused with a message.</param>
/// <param name="Finds">Failures, at most ten: what happened, and the file in base 64.</param>
/// <param name="SlowestMilliseconds">Longest time one file took.</param>
/// <param name="SlowestFile">Which file of the run that was, from 0.</param>
/// <param name="MostAllocatedBytes">Most that one file made the reader allocate.</param>
/// <param name="PeakWorkingSetBytes">Most memory the whole program held.</param>
/// <param name="Elapsed">Time of the run.</param>
public sealed record FuzzReport(
    string Name,
    int Seed,
    int Files,
    int Read,
    int Refused,
    IReadOnlyList<string> Finds,
    double SlowestMilliseconds,
    int SlowestFile,
    long MostAllocatedBytes,
    long PeakWorkingSetBytes,
    TimeSpan Elapsed)
{
    /// <summary>Most memory the program may hold.</summary>
    public const long MaxWorkingSetBytes = 256L * 1024 * 1024;

    /// <summary>Longest time one file may take: a hang, not a machine that is busy with something else.</summary>
    public const double MaxMilliseconds = 20_000;

    /// <summary>No failure, no file that hung, no more memory than allowed.</summary>
    public bool IsClean => Finds.Count == 0 && SlowestMilliseconds <= MaxMilliseconds && PeakWorkingSetBytes <= MaxWorkingSetBytes;

    /// <inheritdoc />
    public override string ToString() =>
        $"{Name}: seed {Seed}, {Files} files, {Read} read, {Refused} refused, {Finds.Count} failures; slowest {SlowestMilliseconds:0} ms (file {SlowestFile}), "
        + $"most allocated {MostAllocatedBytes / 1048576.0:0.0} MB, peak {PeakWorkingSetBytes / 1048576.0:0} MB, {Elapsed.TotalSeconds:0} s"
        + string.Concat(Finds.Select(find => Environment.NewLine + "  " + find));
}
