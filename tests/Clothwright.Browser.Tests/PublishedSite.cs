using System.Diagnostics;
using Clothwright.TestKit;

namespace Clothwright.Browser.Tests;

/// <summary>The page as it is published: trimmed and packed, as users get it.</summary>
internal static class PublishedSite
{
    private static readonly string Folder = Repository.PathOf("artifacts", "browser-site");

    /// <summary>Publishes the page, unless what is there is newer than everything it is made from.</summary>
    /// <returns>The folder to serve.</returns>
    public static async Task<string> MakeAsync()
    {
        string root = Path.Combine(Folder, "wwwroot");
        string stamp = Path.Combine(Folder, "published");
        if (File.Exists(stamp) && File.GetLastWriteTimeUtc(stamp) > NewestSource()) return root;
        if (Directory.Exists(Folder)) Directory.Delete(Folder, recursive: true);
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList = { "publish", Repository.PathOf("src", "Clothwright.Client"), "-c", "Release", "-o", Folder, "-v", "q", "--nologo", "-nodeReuse:false" },
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process publish = Process.Start(start)!;
        Task<string> said = publish.StandardOutput.ReadToEndAsync();
        Task<string> complained = publish.StandardError.ReadToEndAsync();
        await publish.WaitForExitAsync();
        if (publish.ExitCode != 0) throw new InvalidOperationException($"The page could not be published.\n{await said}{await complained}");
        await File.WriteAllTextAsync(stamp, "");
        return root;
    }

    private static DateTime NewestSource() => new[] { "Clothwright.Core", "Clothwright.Interchange", "Clothwright.Client" }
        .SelectMany(p => Directory.EnumerateFiles(Repository.PathOf("src", p), "*", SearchOption.AllDirectories))
        .Append(Repository.PathOf("Directory.Packages.props"))
        .Append(Repository.PathOf("Directory.Build.props"))
        .Append(Repository.PathOf("samples", "reedbed-scarves.json"))
        .Max(File.GetLastWriteTimeUtc);
}
