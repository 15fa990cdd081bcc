using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using Clothwright.Interchange.Http;
using SkiaSharp;

namespace Clothwright.Server.Tests;

public class ShelfAddressTests
{
    private const string Yarn = """{ "id": "tide-blue", "name": "tide blue", "count": "8/2", "system": "cotton", "fibres": [ { "fibre": "bamboo-viscose" } ], "colour": "#2f5f77", "packages": [ { "form": "cone", "grossGrams": 200, "massBy": "told" } ] }""";

    [Fact]
    public async Task A_photo_is_taken_in_shown_and_removed()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.PutAsync("api/shelf/yarns/tide-blue", Yarn, basedOn: null);
        using HttpResponseMessage added = await PostAsync(server, Picture(), "image/png");
        Assert.Equal(HttpStatusCode.Created, added.StatusCode);
        YarnPhoto photo = JsonSerializer.Deserialize(await added.Content.ReadAsStringAsync(), StudioJson.Default.YarnPhoto)!;
        Assert.Equal((64, 48), (photo.WidthPixels, photo.HeightPixels));
        using HttpResponseMessage shown = await server.Http.GetAsync($"api/shelf/photos/{photo.Id}.jpg");
        Assert.Equal("image/jpeg", shown.Content.Headers.ContentType?.MediaType);
        Assert.Equal("nosniff", Assert.Single(shown.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal([0xFF, 0xD8, 0xFF], (await shown.Content.ReadAsByteArrayAsync())[..3]);
        Assert.Equal(HttpStatusCode.NoContent, (await server.Http.DeleteAsync($"api/shelf/photos/{photo.Id}")).StatusCode);
        await StudioServer.RefusalAsync(await server.Http.GetAsync($"api/shelf/photos/{photo.Id}.jpg"), HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task A_file_that_is_no_photo_is_refused_whatever_it_says_of_itself()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.PutAsync("api/shelf/yarns/tide-blue", Yarn, basedOn: null);
        byte[] svg = "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>"u8.ToArray();
        await StudioServer.RefusalAsync(await PostAsync(server, svg, "image/jpeg"), HttpStatusCode.BadRequest);
        await StudioServer.RefusalAsync(await PostAsync(server, svg, "image/svg+xml"), HttpStatusCode.UnsupportedMediaType);
        await StudioServer.RefusalAsync(await PostAsync(server, new byte[UploadLimits.PhotoBytes + 1], "image/jpeg"), HttpStatusCode.RequestEntityTooLarge);
        await StudioServer.RefusalAsync(await PostAsync(server, Picture(), "image/png", "heron"), HttpStatusCode.NotFound);
        Assert.Equal("[]", await server.Http.GetStringAsync("api/shelf/photos"));
    }

    [Fact]
    public async Task Yarn_is_set_aside_for_a_worksheet_changed_and_let_go()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.PutAsync("api/shelf/yarns/tide-blue", Yarn, basedOn: null);
        const string address = "api/shelf/yarns/tide-blue/reservations/creek";
        const string body = """{ "yarnId": "tide-blue", "worksheetId": "creek", "grams": 120 }""";
        Assert.Equal(HttpStatusCode.Created, (await server.PutAsync(address, body, basedOn: null)).StatusCode);
        ProblemReport late = await StudioServer.RefusalAsync(await server.PutAsync(address, body, basedOn: 7), HttpStatusCode.PreconditionFailed);
        Assert.Equal(1, late.CurrentVersion);
        Assert.Equal(HttpStatusCode.NoContent, (await server.PutAsync(address, body.Replace("120", "130", StringComparison.Ordinal), basedOn: 1)).StatusCode);
        Kept<YarnReservation> kept = Assert.Single(JsonSerializer.Deserialize(await server.Http.GetStringAsync("api/shelf/reservations"), StudioJson.Default.KeptYarnReservationArray)!);
        Assert.Equal((2, 130), (kept.Version, kept.Item.Grams));
        await StudioServer.RefusalAsync(await server.PutAsync(address, body.Replace("creek", "ford", StringComparison.Ordinal), basedOn: 2), HttpStatusCode.BadRequest);
        await StudioServer.RefusalAsync(await server.PutAsync(address, body.Replace("120", "-1", StringComparison.Ordinal), basedOn: 2), HttpStatusCode.BadRequest);
        Assert.Equal(HttpStatusCode.NoContent, (await server.SendAsync(HttpMethod.Delete, address, r => r.Headers.TryAddWithoutValidation("If-Match", "\"2\""))).StatusCode);
        Assert.Equal("[]", await server.Http.GetStringAsync("api/shelf/reservations"));
    }

    [Fact]
    public async Task A_table_is_looked_over_and_comes_in_whole_or_not_at_all()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        const string sound = "Garn;Nummer;Material;Gewicht (g)\nPriel;8/2;Baumwolle;200\nDüne;16/2;Leinen;227,5";
        TableReading reading = await SendAsync(server, "reading", new TableRequest { Text = sound }, HttpStatusCode.OK);
        Assert.Equal(["Priel", "Düne"], reading.Yarns.Select(y => y.Name));
        Assert.Equal(227.5, reading.Yarns[1].Grams, 6);
        Assert.DoesNotContain("item", await server.Http.GetStringAsync("api/shelf"), StringComparison.Ordinal);

        TableReading broken = await SendAsync(server, "import", new TableRequest { Text = sound + "\nWatt;8/2;Nebel;200" }, HttpStatusCode.UnprocessableEntity);
        Assert.Equal("line 4, column Material", Assert.Single(broken.Problems).Where);
        Assert.DoesNotContain("item", await server.Http.GetStringAsync("api/shelf"), StringComparison.Ordinal);

        await SendAsync(server, "import", new TableRequest { Text = sound, Mapping = reading.Mapping }, HttpStatusCode.OK);
        Assert.Equal(2, ShelfText.ReadShelf(await server.Http.GetByteArrayAsync("api/shelf")).Value.Length);

        const string again = "id,name,count,fibre\npriel,Priel,8/2,cotton";
        Assert.True(Assert.Single((await SendAsync(server, "import", new TableRequest { Text = again }, HttpStatusCode.UnprocessableEntity)).Yarns).OnShelf);
        await SendAsync(server, "import", new TableRequest { Text = again, Replace = true }, HttpStatusCode.OK);
        Assert.Contains(ShelfText.ReadShelf(await server.Http.GetByteArrayAsync("api/shelf")).Value, k => k is { Version: 2, Item.Id: "priel" });
    }

    private static async Task<TableReading> SendAsync(StudioServer server, string address, TableRequest request, HttpStatusCode status)
    {
        using var content = new StringContent(JsonSerializer.Serialize(request, StudioJson.Default.TableRequest), System.Text.Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await server.Http.PostAsync($"api/shelf/table/{address}", content);
        string text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == status, text);
        return JsonSerializer.Deserialize(text, StudioJson.Default.TableReading)!;
    }

    private static async Task<HttpResponseMessage> PostAsync(StudioServer server, byte[] bytes, string mediaType, string yarn = "tide-blue")
    {
        using var content = new ByteArrayContent(bytes) { Headers = { ContentType = new MediaTypeHeaderValue(mediaType) } };
        // As a browser's own upload would, a large body waits until the server wants it.
        return await server.SendAsync(HttpMethod.Post, $"api/shelf/yarns/{yarn}/photos", request =>
        {
            request.Content = content;
            request.Headers.ExpectContinue = true;
        });
    }

    private static byte[] Picture()
    {
        using var bitmap = new SKBitmap(64, 48);
        bitmap.Erase(new SKColor(0x2f, 0x5f, 0x77));
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
