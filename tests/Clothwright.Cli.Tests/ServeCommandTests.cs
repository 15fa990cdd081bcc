using System.CommandLine;
using Clothwright.Cli.Commands;
using Clothwright.Cli.Serving;

namespace Clothwright.Cli.Tests;

public sealed class ServeCommandTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("clothwright-serve-");

    [Fact]
    public void The_server_is_told_what_the_command_was_told()
    {
        var command = new ServeCommand();
        Assert.Equal(["--port", "6001", "--data", "estuary", "--database", "Host=school", "--lan", "--no-demo"], command.Words(command.Parse(["--port", "6001", "--data", "estuary", "--database", "Host=school", "--lan", "--no-demo"])));
        Assert.Empty(command.Words(command.Parse([])));
    }

    [Fact]
    public void A_released_server_stands_in_its_own_folder_beside_the_command()
    {
        Assert.Null(ServerProgram.Find(_folder.FullName));
        string server = Path.Combine(_folder.CreateSubdirectory("server").FullName, "Clothwright.Server.dll");
        File.WriteAllText(server, "");
        Assert.Equal(server, ServerProgram.Find(_folder.FullName));
    }

    [Fact]
    public void A_built_server_stands_in_the_build_folder_of_its_project()
    {
        string here = _folder.CreateSubdirectory(Path.Combine("Clothwright.Cli", "debug")).FullName;
        string server = Path.Combine(_folder.CreateSubdirectory(Path.Combine("Clothwright.Server", "debug")).FullName, "Clothwright.Server.dll");
        File.WriteAllText(server, "");
        Assert.Equal(server, ServerProgram.Find(here + Path.DirectorySeparatorChar));
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
