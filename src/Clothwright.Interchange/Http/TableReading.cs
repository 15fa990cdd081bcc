using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Csv;

namespace Clothwright.Interchange.Http;

/// <summary>What a table of yarns would come to on the shelf.</summary>
/// <param name="Mapping">How it was read.</param>
/// <param name="Headers">Names of its columns.</param>
/// <param name="Samples">Its first rows.</param>
/// <param name="Yarns">The yarns.</param>
/// <param name="Problems">What cannot be read; nothing is put on the shelf while there is any.</param>
public sealed record TableReading(YarnTableMapping Mapping, string[] Headers, string[][] Samples, TableYarn[] Yarns, TableProblem[] Problems)
{
    /// <summary>The most problems that are told one by one.</summary>
    public const int MostProblems = 200;

    /// <summary>What is told of an outcome.</summary>
    /// <param name="survey">The table as it was looked over.</param>
    /// <param name="mapping">How it was read.</param>
    /// <param name="outcome">What it came to.</param>
    /// <param name="isTaken">Whether an id stands on the shelf.</param>
    public static TableReading Of(YarnTableSurvey survey, YarnTableMapping mapping, YarnTableOutcome outcome, Func<string, bool> isTaken)
    {
        ArgumentNullException.ThrowIfNull(survey);
        ArgumentNullException.ThrowIfNull(outcome);
        return new TableReading(
            mapping,
            [.. survey.Headers],
            [.. survey.Samples.Select(s => s.ToArray())],
            [.. outcome.Yarns.Select((y, i) => Told(y, outcome.Lines[i], isTaken(y.Id)))],
            [.. outcome.Problems.Take(MostProblems).Select(p => new TableProblem(p.Where, p.What, p.Mend))]);
    }

    private static TableYarn Told(YarnEntry entry, int line, bool onShelf)
    {
        Yarn yarn = entry.ToYarn().Value;
        string size = entry.Label ?? string.Join(' ', new[] { entry.Count, entry.CountSystem }.Where(w => w is not null));
        double grams = yarn.Packages.Sum(p => Math.Max(0, p.GrossMass.Grams - p.Tare.Grams));
        return new TableYarn(line, entry.Id, entry.Name, yarn.LinearDensity.Value.Tex, size, yarn.Fibres.ToString(), entry.Colour.ToString(), yarn.Packages.Length, grams, onShelf);
    }
}
