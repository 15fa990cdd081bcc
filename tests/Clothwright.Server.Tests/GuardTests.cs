using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using Clothwright.Interchange.Http;

namespace Clothwright.Server.Tests;

public class GuardTests
{
    [Theory]
    [InlineData("marsh.example")]
    [InlineData("marsh.example:5080")]
    [InlineData("localhost.marsh.example")]
    [InlineData("127.0.0.1.marsh.example")]
    [InlineData("0.0.0.0")]
    public async Task A_foreign_host_name_is_refused(string host)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.SendAsync(HttpMethod.Get, "api/studio", r => r.Headers.Host = host);
        await StudioServer.RefusalAsync(answer, HttpStatusCode.MisdirectedRequest);
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("LOCALHOST:5080")]
    [InlineData("127.0.0.1")]
    [InlineData("[::1]:5080")]
    public async Task The_names_of_this_machine_are_answered(string host)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.SendAsync(HttpMethod.Get, "api/studio", r => r.Headers.Host = host);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData("marsh.example")]
    [InlineData("0.0.0.0")]
    [InlineData("192.0.2.7")]
    public async Task Open_to_the_network_it_still_answers_to_its_own_names_only(string foreign)
    {
        // 192.0.2.0/24 is set aside for documentation and no machine's own: RFC 5737.
        await using StudioServer server = await StudioServer.StartAsync(lan: true);
        using HttpResponseMessage refused = await server.SendAsync(HttpMethod.Get, "api/studio", r => r.Headers.Host = foreign);
        await StudioServer.RefusalAsync(refused, HttpStatusCode.MisdirectedRequest);
        using HttpResponseMessage answer = await server.SendAsync(HttpMethod.Get, "api/studio", r => r.Headers.Host = $"{Dns.GetHostName()}.local");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task Only_this_machine_is_listened_to_unless_it_is_asked_otherwise()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        Assert.True(IPAddress.IsLoopback(IPAddress.Parse(server.Http.BaseAddress!.Host.Trim('[', ']'))));
        await using StudioServer open = await StudioServer.StartAsync(lan: true);
        Assert.Equal("localhost", open.Http.BaseAddress!.Host);
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Origin", "http://marsh.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "https://localhost")]
    public async Task A_write_from_another_site_is_refused_and_changes_nothing(string header, string value)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.SaveAsync("creek", "first", basedOn: null);
        using HttpResponseMessage answer = await server.SendAsync(HttpMethod.Delete, "api/worksheets/creek", r => r.Headers.TryAddWithoutValidation(header, value));
        await StudioServer.RefusalAsync(answer, HttpStatusCode.Forbidden);
        Assert.Contains("creek", await server.Http.GetStringAsync("api/worksheets"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_write_from_the_page_itself_is_let_in()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.SaveAsync("creek", "first", basedOn: null);
        using HttpResponseMessage answer = await server.SendAsync(HttpMethod.Delete, "api/worksheets/creek", r =>
        {
            r.Headers.TryAddWithoutValidation("Origin", server.Http.BaseAddress!.GetLeftPart(UriPartial.Authority));
            r.Headers.TryAddWithoutValidation("Sec-Fetch-Site", "same-origin");
        });
        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
    }

    [Theory]
    [InlineData("api/studio")]
    [InlineData("api/nowhere")]
    [InlineData("api/worksheets/none")]
    public async Task Every_answer_carries_the_guarding_headers(string address)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.Http.GetAsync(address);
        string policy = Header(answer, "Content-Security-Policy");
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("script-src 'self' 'wasm-unsafe-eval';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("'unsafe-eval'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Header(answer, "X-Content-Type-Options"));
        Assert.Equal("no-referrer", Header(answer, "Referrer-Policy"));
        Assert.Equal("same-origin", Header(answer, "Cross-Origin-Resource-Policy"));
        Assert.Empty(answer.Headers.Server);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_worksheet_over_the_limit_is_refused(bool inPieces)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Post, "api/worksheets") { Content = new ByteArrayContent(new byte[UploadLimits.WorksheetBytes + 1]) };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        request.Headers.TransferEncodingChunked = inPieces;
        request.Headers.ExpectContinue = true;
        using HttpResponseMessage answer = await server.Http.SendAsync(request);
        await StudioServer.RefusalAsync(answer, HttpStatusCode.RequestEntityTooLarge);
    }

    [Fact]
    public async Task A_record_has_a_smaller_limit_than_a_worksheet()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.PutAsync("api/swatches/s", new string(' ', UploadLimits.RecordBytes + 1), basedOn: null);
        await StudioServer.RefusalAsync(answer, HttpStatusCode.RequestEntityTooLarge);
    }

    [Fact]
    public async Task A_form_cannot_be_sent_where_JSON_belongs()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.PutAsync("api/worksheets/creek", StudioServer.Sheet("x"), basedOn: null, mediaType: "text/plain");
        await StudioServer.RefusalAsync(answer, HttpStatusCode.UnsupportedMediaType);
    }

    [Fact]
    public async Task The_server_listens_on_this_machine_only()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        int port = server.Http.BaseAddress!.Port;
        using var own = new TcpClient();
        await own.ConnectAsync(IPAddress.Loopback, port);
        Assert.True(own.Connected);
        IPAddress[] outer = [.. (await Dns.GetHostAddressesAsync(Dns.GetHostName())).Where(a => a.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(a))];
        foreach (IPAddress address in outer)
        {
            using var foreign = new TcpClient();
            await Assert.ThrowsAsync<SocketException>(() => foreign.ConnectAsync(address, port));
        }

        Assert.True(IPAddress.IsLoopback(IPAddress.Parse(server.Http.BaseAddress.Host)));
    }

    [Fact]
    public async Task Markup_in_a_title_stays_text()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.SaveAsync("creek", "<script>alert(1)</script>", basedOn: null);
        using HttpResponseMessage answer = await server.Http.GetAsync("api/worksheets/creek");
        Assert.Equal("application/json", answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains("<script>", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal("nosniff", Header(answer, "X-Content-Type-Options"));
        Assert.DoesNotContain("<script>", await server.Http.GetStringAsync("api/worksheets"), StringComparison.Ordinal);
    }

    private static string Header(HttpResponseMessage answer, string name) => Assert.Single(answer.Headers.GetValues(name));
}
