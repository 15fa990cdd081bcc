using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Text;

namespace Clothwright.Browser.Tests;

/// <summary>Stands between browser and server, and makes the page another version of itself, or lets the server be away.</summary>
/// <remarks>A newer version differs in its first file, and therefore in the list of its files and the name of the version.</remarks>
internal sealed class NewerPage : IAsyncDisposable
{
    /// <summary>What the newer page says of itself.</summary>
    public const string Title = "newer";

    /// <summary>What another program answers.</summary>
    public const string Another = "Tide tables";

    private readonly HttpListener _listener;
    private readonly HttpClient _server = new(new SocketsHttpHandler { AllowAutoRedirect = false, AutomaticDecompression = DecompressionMethods.All });
    private readonly string _front;
    private string _behind = "";
    private string _hash = "";
    private byte[]? _newer;
    private Task _work = Task.CompletedTask;

    private NewerPage(HttpListener listener, string front) => (_listener, _front) = (listener, front);

    /// <summary>Whether another program answers in the server's place.</summary>
    public bool IsAnother { get; set; }

    public static Task<NewerPage> BeginAsync()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        string front = $"http://localhost:{((IPEndPoint)probe.LocalEndpoint).Port}";
        probe.Stop();
        var listener = new HttpListener();
        listener.Prefixes.Add($"{front}/");
        listener.Start();
        return Task.FromResult(new NewerPage(listener, front));
    }

    /// <summary>Stands before a server.</summary>
    /// <param name="address">Where the server listens.</param>
    /// <returns>Where the browser finds it now.</returns>
    public string Stand(string address)
    {
        _behind = address;
        _work = ServeAsync();
        return _front;
    }

    /// <summary>From now on the page is a newer one.</summary>
    public async Task RenewAsync()
    {
        byte[] page = await _server.GetByteArrayAsync(new Uri($"{_behind}/index.html"));
        _hash = Hash(page);
        _newer = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(page).Replace("<html lang=\"en\"", $"<html lang=\"en\" data-version=\"{Title}\"", StringComparison.Ordinal));
    }

    /// <summary>From now on nobody answers.</summary>
    public void Leave() => _listener.Stop();

    public async ValueTask DisposeAsync()
    {
        Leave();
        await _work;
        _listener.Close();
        _server.Dispose();
    }

    private async Task ServeAsync()
    {
        var answers = new List<Task>();
        try
        {
            while (_listener.IsListening) answers.Add(AnswerAsync(await _listener.GetContextAsync()));
        }
        catch (Exception stopped) when (stopped is HttpListenerException or ObjectDisposedException)
        {
            // The end of the test.
        }

        await Task.WhenAll(answers);
    }

    private async Task AnswerAsync(HttpListenerContext context)
    {
        try
        {
            if (IsAnother) await SayAsync(context, Encoding.UTF8.GetBytes($"<!DOCTYPE html><title>{Another}</title>{Another}"), "text/html");
            else await PassOnAsync(context);
        }
        catch (Exception gone) when (gone is HttpListenerException or IOException or ObjectDisposedException or HttpRequestException)
        {
            // The browser did not wait.
        }
    }

    private async Task PassOnAsync(HttpListenerContext context)
    {
        using var asked = new HttpRequestMessage(new HttpMethod(context.Request.HttpMethod), _behind + context.Request.RawUrl);
        if (context.Request.HasEntityBody)
        {
            asked.Content = new StreamContent(context.Request.InputStream);
            asked.Content.Headers.TryAddWithoutValidation("Content-Type", context.Request.ContentType);
        }

        asked.Headers.Host = context.Request.UserHostName;
        foreach (string name in (string[])["If-Match", "If-None-Match", "Origin", "Sec-Fetch-Site"])
        {
            // Files that may have become others are sent whole.
            if (name == "If-None-Match" && !context.Request.RawUrl!.StartsWith("/api/", StringComparison.Ordinal)) continue;
            if (context.Request.Headers[name] is { } value) asked.Headers.TryAddWithoutValidation(name, value);
        }

        using HttpResponseMessage answer = await _server.SendAsync(asked);
        context.Response.StatusCode = (int)answer.StatusCode;
        foreach (string name in (string[])["ETag", "Cache-Control", "Content-Security-Policy", "Location"])
        {
            if (answer.Headers.TryGetValues(name, out IEnumerable<string>? values)) context.Response.Headers[name] = string.Join(", ", values);
        }

        byte[] body = await answer.Content.ReadAsByteArrayAsync();
        string type = answer.Content.Headers.ContentType?.ToString() ?? "";
        await SayAsync(context, Renewed(context.Request.Url!.AbsolutePath, type, body), type);
    }

    private static async Task SayAsync(HttpListenerContext context, byte[] body, string type)
    {
        if (type.Length > 0) context.Response.ContentType = type;
        if (context.Response.StatusCode is not (204 or 304)) await context.Response.OutputStream.WriteAsync(body);
        context.Response.Close();
    }

    private byte[] Renewed(string path, string type, byte[] body)
    {
        if (_newer is null) return body;
        if (type.StartsWith("text/html", StringComparison.Ordinal)) return _newer;
        string text = path == "/service-worker-assets.js" ? Encoding.UTF8.GetString(body) : "";
        return text.Length == 0 ? body : Encoding.UTF8.GetBytes(text
            .Replace("\"version\": \"", $"\"version\": \"{Title}-", StringComparison.Ordinal)
            .Replace(_hash, Hash(_newer), StringComparison.Ordinal));
    }

    private static string Hash(byte[] body) => $"sha256-{Convert.ToBase64String(SHA256.HashData(body))}";
}
