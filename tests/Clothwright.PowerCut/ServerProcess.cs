using System.Diagnostics;
using Clothwright.Server;

namespace Clothwright.PowerCut;

/// <summary>The server as a process of its own, which can be killed outright.</summary>
internal sealed class ServerProcess : IDisposable
{
    private readonly Process _process;

    private ServerProcess(Process process, Uri address)
    {
        _process = process;
        Address = address;
    }

    public Uri Address { get; }

    /// <summary>Starts the server on a free port and waits until it says where it is open.</summary>
    public static async Task<ServerProcess> StartAsync(string folder)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(ServerHost).Assembly.Location, "--port", "0", "--data", folder, "--no-demo"])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        Process process = Process.Start(start)!;
        string? line = await process.StandardOutput.ReadLineAsync();
        string address = line?.Split(' ').FirstOrDefault(w => w.StartsWith("http://", StringComparison.Ordinal)) ?? throw new InvalidOperationException($"The server did not start: {line}");
        return new ServerProcess(process, new Uri(address));
    }

    /// <summary>Kills it without warning: SIGKILL.</summary>
    public async Task KillAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill();
        _process.Dispose();
    }
}
