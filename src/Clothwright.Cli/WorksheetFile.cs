using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Cli;

/// <summary>Reads a worksheet and works out its plan.</summary>
internal static class WorksheetFile
{
    /// <summary>The worksheet; draft files that it names are looked for beside it.</summary>
    /// <param name="path">Path as typed.</param>
    /// <exception cref="InputProblemException">The file holds no worksheet, or the worksheet cannot be planned.</exception>
    public static (Worksheet Worksheet, PlanResult Plan) Plan(string path)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        Worksheet worksheet = Named(WorksheetReader.Read(InputFile.Read(path), name => DraftBeside(folder, name)), path);
        return (worksheet, Named(worksheet.Plan(), path));
    }

    private static Parsed<Draft> DraftBeside(string folder, string name)
    {
        try
        {
            return DraftFile.Read(Path.Combine(folder, name)).Woven.Draft;
        }
        catch (InputProblemException exception)
        {
            return exception.Problem;
        }
    }

    // The field path stays; the file's name goes in front, so that the place is whole.
    private static T Named<T>(Parsed<T> parsed, string path)
        where T : notnull =>
        parsed.Succeeded
            ? parsed.Value
            : throw new InputProblemException(parsed.Problem with { Where = $"{Path.GetFileName(path)}: {parsed.Problem.Where}" });
}
