using System.CommandLine;
using System.Globalization;
using Clothwright.Cli.Reports;
using Clothwright.Cli.Serving;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright serve</c>: opens the studio for the browser.</summary>
internal sealed class ServeCommand : Command
{
    private readonly Option<int?> _port = new("--port") { Description = "Port on which it listens; 5080 if left out." };
    private readonly Option<string?> _data = new("--data") { Description = "Folder in which the studio is kept; your own data folder if left out." };
    private readonly Option<string?> _database = new("--database") { Description = "PostgreSQL database in which the studio is kept, for a school: \"Host=…;Database=…;Username=…\". A file in the data folder if left out." };
    private readonly Option<bool> _lan = new("--lan") { Description = "Let other devices in the network in, not this machine alone. Whoever is in it can read and change everything." };
    private readonly Option<bool> _bare = new("--no-demo") { Description = "Begin with an empty studio instead of the demo studio." };

    /// <summary>The command.</summary>
    public ServeCommand()
        : base("serve", "Opens the studio in the browser: worksheets, shelf and bench, kept on this machine. Stop it with Ctrl+C.")
    {
        foreach (Option option in (Option[])[_port, _data, _database, _lan, _bare]) Options.Add(option);
        SetAction(Serve);
    }

    /// <summary>What the server is told.</summary>
    internal IEnumerable<string> Words(ParseResult input)
    {
        if (input.GetValue(_port) is { } port)
        {
            yield return "--port";
            yield return port.ToString(CultureInfo.InvariantCulture);
        }

        if (input.GetValue(_data) is { } data)
        {
            yield return "--data";
            yield return data;
        }

        if (input.GetValue(_database) is { } database)
        {
            yield return "--database";
            yield return database;
        }

        if (input.GetValue(_lan)) yield return "--lan";
        if (input.GetValue(_bare)) yield return "--no-demo";
    }

    private int Serve(ParseResult input)
    {
        if (ServerProgram.Find(AppContext.BaseDirectory) is { } program) return ServerProgram.Run(program, Words(input));
        var problem = new InputProblem(
            $"The studio's server is not beside this program; it was looked for at {string.Join(" and ", ServerProgram.Places(AppContext.BaseDirectory).Select(Path.GetFullPath))}.",
            "serve",
            "Build it with: dotnet build src/Clothwright.Server");
        input.InvocationConfiguration.Error.WriteLine(ProblemText.Write(problem));
        return ExitCode.BadInput;
    }
}
