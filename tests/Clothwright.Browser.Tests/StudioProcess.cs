using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Clothwright.Browser.Tests;

/// <summary>The published server as a process of its own, on a free port.</summary>
public sealed partial class StudioProcess : IAsyncDisposable
{
    private readonly string _program;
    private readonly string _folder;
    private Process _process = null!;

    private StudioProcess(string program, string folder)
    {
        _program = program;
        _folder = folder;
    }

    /// <summary>Where it listens.</summary>
    public string Address { get; private set; } = "";

    /// <summary>Starts a server with a studio of its own, which is gone with it.</summary>
    /// <param name="program">The published program.</param>
    /// <param name="demo">Whether the demo studio is in it.</param>
    public static async Task<StudioProcess> StartAsync(string program, bool demo = true)
    {
        var studio = new StudioProcess(program, Directory.CreateTempSubdirectory("clothwright-browser-").FullName);
        await studio.RunAsync(port: 0, demo);
        return studio;
    }

    /// <summary>Kills the server as a power cut would.</summary>
    public async Task KillAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    /// <summary>Starts the server again at the same address, with the same studio.</summary>
    public Task ReviveAsync() => RunAsync(new Uri(Address).Port, demo: false);

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited) await KillAsync();
        _process.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private async Task RunAsync(int port, bool demo)
    {
        var start = new ProcessStartInfo("dotnet") { ArgumentList = { _program, "--port", $"{port}", "--data", _folder }, RedirectStandardOutput = true, RedirectStandardError = true };
        if (!demo) start.ArgumentList.Add("--no-demo");
        _process = Process.Start(start)!;
        while (await _process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (Said().Match(line) is not { Success: true } said) continue;
            Address = said.Value;
            return;
        }

        throw new InvalidOperationException($"The server did not start.\n{await _process.StandardError.ReadToEndAsync()}");
    }

    [GeneratedRegex(@"http://[^\s/]+")]
    private static partial Regex Said();
}
