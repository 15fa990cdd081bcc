using System.Text.Json;
using Clothwright.TestKit;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Clothwright.Server.Tests;

public class ApiDescriptionTests
{
    [Fact]
    public async Task Every_address_has_a_name_and_a_summary()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        RouteEndpoint[] routes = [.. server.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().Where(IsAddress)];
        Assert.True(routes.Length > 20);
        Assert.Empty(routes.Where(r => r.Metadata.GetMetadata<IEndpointNameMetadata>() is null || r.Metadata.GetMetadata<IEndpointSummaryMetadata>() is null).Select(r => r.RoutePattern.RawText));
    }

    private static bool IsAddress(RouteEndpoint route) =>
        route.RoutePattern.RawText is { } text && text.StartsWith("/api/", StringComparison.Ordinal) && text != "/api/openapi.json" && route.Order != int.MaxValue;

    [Fact]
    public async Task The_written_description_is_that_of_the_server()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        string path = Repository.PathOf("docs", "reference", "openapi.json");
        string actual = (await server.Http.GetStringAsync("api/openapi.json")).ReplaceLineEndings("\n").TrimEnd() + "\n";
        string written = File.Exists(path) ? (await File.ReadAllTextAsync(path)).ReplaceLineEndings("\n") : "";
        if (actual != written) await File.WriteAllTextAsync(path + ".received", actual);
        Assert.True(actual == written, "docs/reference/openapi.json is not what the server does: read openapi.json.received beside it, and rename it if it is right.");
    }

    [Fact]
    public async Task The_description_lists_the_addresses_and_their_refusals()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using var description = JsonDocument.Parse(await server.Http.GetStringAsync("api/openapi.json"));
        JsonElement save = description.RootElement.GetProperty("paths").GetProperty("/api/worksheets/{id}").GetProperty("put");
        Assert.Equal("SaveWorksheet", save.GetProperty("operationId").GetString());
        Assert.True(save.GetProperty("responses").GetProperty("412").GetProperty("content").TryGetProperty("application/problem+json", out _));
    }

    [Theory]
    [InlineData("--port", "eighty")]
    [InlineData("--port", "70000")]
    [InlineData("--port")]
    [InlineData("--everywhere")]
    [InlineData("--database")]
    [InlineData("--database", "Database=weaving")]
    [InlineData("--database", "marsh")]
    [InlineData("--database", "Host=localhost;Tide=high")]
    public void What_cannot_be_an_option_is_refused(params string[] words) => Assert.NotNull(ServerOptions.Parse(words).Problem);

    [Fact]
    public void Options_are_read_from_the_words_after_the_command()
    {
        ServerOptions options = ServerOptions.Parse(["--port", "6001", "--data", "/tmp/estuary", "--no-demo", "--lan"]).Value;
        Assert.Equal((6001, Path.GetFullPath("/tmp/estuary"), false, true), (options.Port, options.DataFolder, options.Demo, options.Lan));
        Assert.Null(options.Database);
        Assert.Contains("Host=localhost", ServerOptions.Parse(["--database", "Host=localhost;Database=weaving"]).Value.Database, StringComparison.Ordinal);
        ServerOptions usual = ServerOptions.Parse([]).Value;
        Assert.Equal((5080, true, false), (usual.Port, usual.Demo, usual.Lan));
    }
}
