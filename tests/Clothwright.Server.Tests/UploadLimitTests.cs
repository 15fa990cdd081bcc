using System.Net;
using System.Net.Http.Headers;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Http;

namespace Clothwright.Server.Tests;

/// <summary>Nothing that is sent may be of any size: each address refuses what is larger than it can need, before it is read.</summary>
public class UploadLimitTests
{
    public static TheoryData<string, string, string, long> Addresses => new()
    {
        { "POST", "api/worksheets", "application/json", UploadLimits.WorksheetBytes },
        { "PUT", "api/worksheets/creek", "application/json", UploadLimits.WorksheetBytes },
        { "PUT", "api/shelf/yarns/tide-blue", "application/json", UploadLimits.RecordBytes },
        { "PUT", "api/shelf/yarns/tide-blue/reservations/creek", "application/json", UploadLimits.RecordBytes },
        { "PUT", "api/bench", "application/json", UploadLimits.RecordBytes },
        { "PUT", "api/swatches/s", "application/json", UploadLimits.RecordBytes },
        { "PUT", "api/weaving-log/s", "application/json", UploadLimits.RecordBytes },
        { "POST", "api/shelf/table.csv", "text/csv", UploadLimits.ShelfTableBytes },
        { "POST", "api/drafts/read", "application/octet-stream", ReadingLimits.Usual.MaxBytes },
        { "POST", "api/bundle.zip", "application/zip", UploadLimits.BundleBytes },
    };

    [Theory]
    [MemberData(nameof(Addresses))]
    public async Task What_says_that_it_is_too_large_is_refused_unread(string method, string address, string mediaType, long most)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        // Waits for the answer to what was announced, however busy the machine is.
        using var patient = new HttpClient(new SocketsHttpHandler { Expect100ContinueTimeout = TimeSpan.FromMinutes(2) }) { BaseAddress = server.Http.BaseAddress };
        using var request = new HttpRequestMessage(new HttpMethod(method), address) { Content = new Announced(most + 1, mediaType) };
        request.Headers.ExpectContinue = true;
        request.Headers.TryAddWithoutValidation("If-None-Match", "*");
        using HttpResponseMessage answer = await patient.SendAsync(request);
        ProblemReport report = await StudioServer.RefusalAsync(answer, HttpStatusCode.RequestEntityTooLarge);
        Assert.Contains($"{most}", report.What, StringComparison.Ordinal);
    }

    // Announces more than it would ever send.
    private sealed class Announced : HttpContent
    {
        private readonly long _bytes;

        public Announced(long bytes, string mediaType)
        {
            _bytes = bytes;
            Headers.ContentType = new MediaTypeHeaderValue(mediaType);
        }

        protected override Task SerializeToStreamAsync(Stream stream, TransportContext? context) => throw new IOException("It was asked for, although it was announced as too large.");

        protected override bool TryComputeLength(out long length)
        {
            length = _bytes;
            return true;
        }
    }
}
