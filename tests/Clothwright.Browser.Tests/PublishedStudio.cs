using System.Diagnostics;
using Clothwright.TestKit;

namespace Clothwright.Browser.Tests;

/// <summary>The server with its page as they are published: trimmed and packed, as users get them.</summary>
internal static class PublishedStudio
{
    // Names a server that is published already, so that many runs need not wait for it.
    private const string ReadyMade = "CLOTHWRIGHT_SERVER";

    private static readonly string Folder = Repository.PathOf("artifacts", "browser-studio");

    /// <summary>Publishes the server, unless what is there is newer than everything it is made from.</summary>
    /// <returns>The program to run.</returns>
    public static async Task<string> MakeAsync()
    {
        if (Environment.GetEnvironmentVariable(ReadyMade) is { Length: > 0 } ready) return Path.GetFullPath(ready);
        string program = Path.Combine(Folder, "Clothwright.Server.dll");
        string stamp = Path.Combine(Folder, "published");
        if (File.Exists(stamp) && File.GetLastWriteTimeUtc(stamp) > NewestSource()) return program;
        if (Directory.Exists(Folder)) Directory.Delete(Folder, recursive: true);
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList = { "publish", Repository.PathOf("src", "Clothwright.Server"), "-c", "Release", "-o", Folder, "-v", "q", "--nologo", "-nodeReuse:false" },
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process publish = Process.Start(start)!;
        Task<string> said = publish.StandardOutput.ReadToEndAsync();
        Task<string> complained = publish.StandardError.ReadToEndAsync();
        await publish.WaitForExitAsync();
        if (publish.ExitCode != 0) throw new InvalidOperationException($"The server could not be published.\n{await said}{await complained}");
        await File.WriteAllTextAsync(stamp, "");
        return program;
    }

    private static DateTime NewestSource() => Directory.EnumerateFiles(Repository.PathOf("src"), "*", SearchOption.AllDirectories)
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .Concat(Directory.EnumerateFiles(Repository.PathOf("samples"), "*.json"))
        .Append(Repository.PathOf("Directory.Packages.props"))
        .Append(Repository.PathOf("Directory.Build.props"))
        .Max(File.GetLastWriteTimeUtc);
}
