using System.Net;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Clothwright.Server.Tests;

public partial class PageTests
{
    [Theory]
    [InlineData("")]
    [InlineData("worksheets/creek")]
    public async Task The_page_is_served_at_its_addresses(string address)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.Http.GetAsync(address);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("text/html", answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains("wasm-unsafe-eval", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Contains("_framework/blazor.webassembly.js", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_file_that_the_page_names_is_served()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        string page = await server.Http.GetStringAsync("");
        string[] files = [.. Named().Matches(page).Select(m => m.Groups[1].Value).Where(f => f is not ("." or "/"))];
        Assert.True(files.Length >= 3);
        foreach (string file in files)
        {
            using HttpResponseMessage answer = await server.Http.GetAsync(file);
            Assert.True(answer.IsSuccessStatusCode && answer.Content.Headers.ContentType?.MediaType != "text/html", file);
        }
    }

    [Fact]
    public async Task Every_file_that_the_browser_is_to_keep_is_served_as_its_hash_says()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        Assert.Contains("service-worker-assets.js", await server.Http.GetStringAsync("service-worker.js"), StringComparison.Ordinal);
        string list = await server.Http.GetStringAsync("service-worker-assets.js");
        using JsonDocument kept = JsonDocument.Parse(list[list.IndexOf('{', StringComparison.Ordinal)..(list.LastIndexOf('}') + 1)]);
        JsonElement[] files = [.. kept.RootElement.GetProperty("assets").EnumerateArray()];
        Assert.Contains(files, f => f.GetProperty("url").GetString() == "index.html");
        foreach (JsonElement file in files)
        {
            string address = file.GetProperty("url").GetString()!;
            if (address.EndsWith(".pdb", StringComparison.Ordinal)) continue;
            byte[] bytes = await server.Http.GetByteArrayAsync(address);
            Assert.True($"sha256-{Convert.ToBase64String(SHA256.HashData(bytes))}" == file.GetProperty("hash").GetString(), address);
        }
    }

    [Fact]
    public async Task The_page_holds_no_script_or_style_of_its_own()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        string page = await server.Http.GetStringAsync("");
        Assert.DoesNotMatch(@"<script(?![^>]*\bsrc=)", page);
        Assert.DoesNotMatch(@"<style|\sstyle=|\son[a-z]+=", page);
    }

    [Theory]
    [InlineData("api/nowhere")]
    [InlineData("css/none.css")]
    public async Task What_is_not_there_is_not_answered_with_the_page(string address)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await StudioServer.RefusalAsync(await server.Http.GetAsync(address), HttpStatusCode.NotFound);
    }

    [GeneratedRegex("(?:src|href)=\"([^\"]+)\"", RegexOptions.None, 1000)]
    private static partial Regex Named();
}
