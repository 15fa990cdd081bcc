using System.Net;
using System.Text;
using System.Text.Json;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Storage.Sqlite;
using Clothwright.TestKit;
using Microsoft.AspNetCore.Builder;

namespace Clothwright.Server.Tests;

/// <summary>The real server on a free port, with a studio of its own that is gone with the test; speaks as the page does.</summary>
internal sealed class StudioServer : IAsyncDisposable
{
    private readonly string _folder;
    private readonly WebApplication _server;

    private StudioServer(string folder, WebApplication server)
    {
        _folder = folder;
        _server = server;
        Http = new HttpClient { BaseAddress = ServerHost.AddressOf(server) };
    }

    public HttpClient Http { get; }

    public IServiceProvider Services => _server.Services;

    public static async Task<StudioServer> StartAsync(bool demo = false, bool lan = false)
    {
        string folder = Directory.CreateTempSubdirectory("clothwright-server-").FullName;
        WebApplication server = await ServerHost.BuildAsync(new ServerOptions { Port = 0, DataFolder = folder, Demo = demo, Lan = lan });
        await server.StartAsync();
        return new StudioServer(folder, server);
    }

    /// <summary>A worksheet as the page would send it.</summary>
    public static string Sheet(string title)
    {
        Worksheet worksheet = WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", "reedbed-scarves.json"))).Value;
        return Encoding.UTF8.GetString(WorksheetWriter.Write(worksheet with { Title = title }));
    }

    /// <summary>Saves a document under an address; based on a version, or new.</summary>
    public Task<HttpResponseMessage> PutAsync(string address, string document, int? basedOn, string mediaType = "application/json") =>
        SendAsync(HttpMethod.Put, address, request =>
        {
            request.Content = new StringContent(document, Encoding.UTF8, mediaType);
            request.Headers.TryAddWithoutValidation(basedOn is null ? "If-None-Match" : "If-Match", basedOn is null ? "*" : $"\"{basedOn}\"");
        });

    /// <summary>Saves a worksheet and expects it to be kept.</summary>
    public async Task<SavedWorksheet> SaveAsync(string id, string title, int? basedOn)
    {
        using HttpResponseMessage answer = await PutAsync($"api/worksheets/{id}", Sheet(title), basedOn);
        Assert.Equal(basedOn is null ? HttpStatusCode.Created : HttpStatusCode.OK, answer.StatusCode);
        return JsonSerializer.Deserialize(await answer.Content.ReadAsStringAsync(), StudioJson.Default.SavedWorksheet)!;
    }

    public async Task<HttpResponseMessage> SendAsync(HttpMethod method, string address, Action<HttpRequestMessage>? with = null)
    {
        using var request = new HttpRequestMessage(method, address);
        with?.Invoke(request);
        return await Http.SendAsync(request);
    }

    /// <summary>Expects a refusal, written as problem details, and reads it.</summary>
    public static async Task<ProblemReport> RefusalAsync(HttpResponseMessage answer, HttpStatusCode status)
    {
        string text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == status, $"{(int)answer.StatusCode}: {text}");
        Assert.Equal(ProblemReport.MediaType, answer.Content.Headers.ContentType?.MediaType);
        return JsonSerializer.Deserialize(text, StudioJson.Default.ProblemReport)!;
    }

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        await _server.DisposeAsync();
        SqliteStudio.Close(_folder);
        Directory.Delete(_folder, recursive: true);
    }
}
