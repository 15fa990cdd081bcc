using System.CommandLine;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Storage;
using Clothwright.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Clothwright.Cli.Shelf;

/// <summary>A command that works on the shelf of a studio: the same file that the server keeps.</summary>
/// <remarks>Each command is one transaction, so it may run while the server runs; an open page shows it when it looks again.</remarks>
internal abstract class ShelfCommand : ReportCommand
{
    /// <summary>What is said of running beside the server, in each command's help.</summary>
    public const string BesideServer = "May run while the server runs: each change is saved whole, and an open page shows it when it asks again.";

    private readonly Option<string?> _data = new("--data") { Description = "The studio's data folder, as given to the server; the user's own if left out." };

    /// <summary>A command by its name as typed and one sentence of help.</summary>
    protected ShelfCommand(string name, string description)
        : base(name, $"{description} {BesideServer}") => Options.Add(_data);

    /// <inheritdoc />
    protected sealed override Report Make(ParseResult input)
    {
        string folder = input.GetValue(_data) is { Length: > 0 } given ? Path.GetFullPath(given) : UsualFolder;
        try
        {
            if (!Directory.Exists(folder) && !MakesStudio) throw new InputProblemException(new InputProblem($"There is no studio in \"{folder}\".", "--data", "Name the folder that the server was given with --data, or put a yarn there with shelf add."));
            return WorkAsync(folder, input).GetAwaiter().GetResult();
        }
        catch (Exception fault) when (fault is SqliteException or IOException or UnauthorizedAccessException)
        {
            throw new InputProblemException(new InputProblem($"The studio in \"{folder}\" cannot be used: {fault.Message.TrimEnd('.')}.", "--data", "Name the folder of a studio that you may write to; if something else is just writing there, try again."));
        }
        finally
        {
            if (Directory.Exists(folder)) SqliteStudio.Close(folder);
        }
    }

    /// <summary>Whether a folder without a studio gets one.</summary>
    protected virtual bool MakesStudio => false;

    /// <summary>Does the work on the studio.</summary>
    protected abstract Task<Report> WorkAsync(Studio studio, ParseResult input);

    // As the server: where the user's programs keep their own data.
    private static string UsualFolder => Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "clothwright");

    private async Task<Report> WorkAsync(string folder, ParseResult input) => await WorkAsync(await SqliteStudio.OpenAsync(folder, TimeProvider.System), input);
}
