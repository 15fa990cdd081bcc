using System.Diagnostics;

namespace Clothwright.FirstLoad;

/// <summary>A published server with a demo studio of its own, gone with it.</summary>
internal sealed class PublishedServer : IAsyncDisposable
{
    private readonly Process _process;
    private readonly string _data;

    private PublishedServer(Process process, string data, string address)
    {
        _process = process;
        _data = data;
        Address = address;
    }

    public string Address { get; }

    public static async Task<PublishedServer> StartAsync(string folder)
    {
        string data = Directory.CreateTempSubdirectory("clothwright-first-load-").FullName;
        var start = new ProcessStartInfo("dotnet", [Path.Combine(folder, "Clothwright.Server.dll"), "--port", "0", "--data", data]) { RedirectStandardOutput = true };
        Process process = Process.Start(start)!;
        string line = await process.StandardOutput.ReadLineAsync() ?? "";
        string address = line.Split(' ').FirstOrDefault(w => w.StartsWith("http://", StringComparison.Ordinal)) ?? throw new InvalidOperationException($"The server did not start: {line}");
        return new PublishedServer(process, data, address.TrimEnd('/'));
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
        Directory.Delete(_data, recursive: true);
    }
}
