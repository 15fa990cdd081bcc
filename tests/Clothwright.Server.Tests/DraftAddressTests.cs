using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Clothwright.Interchange.Http;

namespace Clothwright.Server.Tests;

public class DraftAddressTests
{
    [Fact]
    public async Task A_grid_of_ones_and_noughts_comes_back_as_WIF()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await SendAsync(server, Encoding.UTF8.GetBytes("1100\n0110\n0011\n1001\n"));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        ReadDraft read = JsonSerializer.Deserialize(await answer.Content.ReadAsStringAsync(), StudioJson.Default.ReadDraft)!;
        Assert.StartsWith("[WIF]", read.Wif, StringComparison.Ordinal);
        // 2/2 twill over four ends takes four shafts: each end interlaces otherwise.
        Assert.Contains("Shafts=4", read.Wif, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task What_is_no_draft_is_refused_in_words()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await SendAsync(server, Encoding.UTF8.GetBytes("the tide is out\n"));
        Assert.NotEmpty((await StudioServer.RefusalAsync(answer, HttpStatusCode.BadRequest)).Mend!);
        using HttpResponseMessage torn = await SendAsync(server, [0x89, (byte)'P', (byte)'N', (byte)'G', 1, 2, 3]);
        Assert.NotEmpty((await StudioServer.RefusalAsync(torn, HttpStatusCode.BadRequest)).Mend!);
    }

    private static async Task<HttpResponseMessage> SendAsync(StudioServer server, byte[] file)
    {
        using var content = new ByteArrayContent(file);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/octet-stream");
        return await server.Http.PostAsync("api/drafts/read?name=twill.txt", content);
    }
}
