using System.Diagnostics;

namespace Clothwright.Cli.Serving;

/// <summary>The studio's server, a program of its own beside this one.</summary>
internal static class ServerProgram
{
    private const string FileName = "Clothwright.Server.dll";

    /// <summary>Places where the server may stand, seen from the folder of this program.</summary>
    /// <param name="here">The folder of this program.</param>
    public static IReadOnlyList<string> Places(string here)
    {
        string folder = Path.TrimEndingDirectorySeparator(Path.GetFullPath(here));
        // As released: in its own folder beside this program. As built: in the build folder of its own project.
        return [Path.Combine(folder, "server", FileName), Path.Combine(folder, "..", "..", "Clothwright.Server", Path.GetFileName(folder), FileName)];
    }

    /// <summary>The server; null where it is not there.</summary>
    /// <param name="here">The folder of this program.</param>
    public static string? Find(string here) => Places(here).Select(Path.GetFullPath).FirstOrDefault(File.Exists);

    /// <summary>Runs the server until it ends.</summary>
    /// <param name="program">The server.</param>
    /// <param name="words">What it is told.</param>
    /// <returns>Its exit code.</returns>
    public static int Run(string program, IEnumerable<string> words)
    {
        var start = new ProcessStartInfo("dotnet", [program, .. words]) { UseShellExecute = false };
        using Process server = Process.Start(start)!;
        server.WaitForExit();
        return server.ExitCode;
    }
}
