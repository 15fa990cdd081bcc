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
