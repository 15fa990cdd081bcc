using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.NetworkInformation;
using System.Text.RegularExpressions;

namespace Clothwright.Server.Tests;

/// <summary>The server as a process of its own, as it is started: where it listens, and what it says of that.</summary>
public sealed partial class NetworkTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("clothwright-listening-");

    [Fact]
    public async Task Unasked_it_listens_on_this_machine_alone_and_warns_of_nothing()
    {
        using Process server = Start();
        (string said, int port) = await SaidAsync(server);
        IPAddress[] listening = Listening(port);
        server.Kill();
        await server.WaitForExitAsync();
        Assert.NotEmpty(listening);
        Assert.All(listening, address => Assert.True(IPAddress.IsLoopback(address), $"It listens on {address}."));
        Assert.DoesNotContain("open to the network", said + await server.StandardOutput.ReadToEndAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Asked_to_it_listens_in_the_network_warns_and_keeps_looking_at_the_name_it_is_called_by()
    {
        using Process server = Start("--lan");
        (_, int port) = await SaidAsync(server);
        string warning = await server.StandardOutput.ReadLineAsync() ?? "";
        IPAddress[] listening = Listening(port);
        using var http = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port.ToString(CultureInfo.InvariantCulture)}/") };
        HttpStatusCode own = (await http.GetAsync("api/studio")).StatusCode;
        using var misled = new HttpRequestMessage(HttpMethod.Get, "api/studio") { Headers = { Host = "marsh.example" } };
        HttpStatusCode foreign = (await http.SendAsync(misled)).StatusCode;
        server.Kill();
        await server.WaitForExitAsync();
        Assert.Contains(listening, address => address.Equals(IPAddress.Any) || address.Equals(IPAddress.IPv6Any));
        Assert.Contains("open to the network", warning, StringComparison.Ordinal);
        Assert.Contains("can read and change everything", warning, StringComparison.Ordinal);
        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.MisdirectedRequest), (own, foreign));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static IPAddress[] Listening(int port) =>
        [.. IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners().Where(l => l.Port == port).Select(l => l.Address)];

    private Process Start(params string[] words) => Process.Start(new ProcessStartInfo(
        "dotnet", [typeof(ServerHost).Assembly.Location, "--port", "0", "--data", _folder.FullName, "--no-demo", .. words])
    {
        RedirectStandardOutput = true,
        UseShellExecute = false,
    })!;

    private static async Task<(string Said, int Port)> SaidAsync(Process server)
    {
        string said = await server.StandardOutput.ReadLineAsync() ?? "";
        Match address = Address().Match(said);
        Assert.True(address.Success, said);
        return (said, int.Parse(address.Groups[1].Value, CultureInfo.InvariantCulture));
    }

    [GeneratedRegex(@"http://[^\s/]*:(\d+)")]
    private static partial Regex Address();
}
