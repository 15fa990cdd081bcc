using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Storage.PostgreSql;

namespace Clothwright.Server;

/// <summary>Where the server listens and where it keeps the studio.</summary>
public sealed record ServerOptions
{
    /// <summary>The port that is used when none is named.</summary>
    public const int UsualPort = 5080;

    /// <summary>The port; 0 lets the system choose one.</summary>
    public int Port { get; init; } = UsualPort;

    /// <summary>The folder in which the studio is kept.</summary>
    public string DataFolder { get; init; } = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "clothwright");

    /// <summary>The PostgreSQL database in which the studio is kept; null for a file in the data folder.</summary>
    public string? Database { get; init; }

    /// <summary>Whether other devices in the network may call, not this machine alone.</summary>
    public bool Lan { get; init; }

    /// <summary>Whether an empty studio is filled with the demo studio.</summary>
    public bool Demo { get; init; } = true;

    /// <summary>Where the studio is kept, in words.</summary>
    internal string Place => Database is { } database ? PostgreSqlStudio.InWords(database) : DataFolder;

    /// <summary>Reads <c>--port NUMBER</c>, <c>--data DIR</c>, <c>--database WORDS</c>, <c>--lan</c> and <c>--no-demo</c>.</summary>
    /// <param name="arguments">The words after the command.</param>
    public static Parsed<ServerOptions> Parse(IReadOnlyList<string> arguments)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        var options = new ServerOptions();
        for (int i = 0; i < arguments.Count; i++)
        {
            string word = arguments[i];
            if (word is "--no-demo")
            {
                options = options with { Demo = false };
                continue;
            }

            if (word is "--lan")
            {
                options = options with { Lan = true };
                continue;
            }

            if (word is not ("--port" or "--data" or "--database")) return new InputProblem($"\"{word}\" is not known here.", word, "Use --port 5080, --data DIR, --database \"Host=…\", --lan or --no-demo.");
            if (++i == arguments.Count) return new InputProblem($"Nothing follows {word}.", word, MendOf(word));
            if (word is "--data") options = options with { DataFolder = Path.GetFullPath(arguments[i]) };
            else if (word is "--database")
            {
                Parsed<string> database = PostgreSqlStudio.Read(arguments[i], word);
                if (!database.Succeeded) return database.Problem;
                options = options with { Database = database.Value };
            }
            else if (int.TryParse(arguments[i], NumberStyles.None, CultureInfo.InvariantCulture, out int port) && port <= ushort.MaxValue) options = options with { Port = port };
            else return new InputProblem($"\"{arguments[i]}\" is no port.", word, "Write a number from 1024 to 65535, for example --port 5080.");
        }

        return options;
    }

    private static string MendOf(string word) => word switch
    {
        "--port" => "Write for example --port 5080.",
        "--data" => "Name a folder, for example --data studio.",
        _ => "Name a PostgreSQL database, for example --database \"Host=localhost;Database=weaving;Username=school\".",
    };
}
