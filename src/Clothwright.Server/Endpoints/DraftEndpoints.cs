using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Pictures;
using Clothwright.Drawing.Images;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/drafts</c>: reads draft files that the page cannot read itself, such as pictures of a drawdown.</summary>
internal static class DraftEndpoints
{
    private const string AnyFile = "application/octet-stream";

    public static void MapDrafts(this RouteGroupBuilder api) => api.MapPost("/drafts/read", ReadAsync)
        .WithName("ReadDraftFile").WithTags("Drafts")
        .WithSummary("Reads a draft from WIF, a grid of 1 and 0, a table, or a picture of a drawdown in two tones, and answers it as WIF. Nothing is kept.")
        .Accepts<byte[]>(AnyFile).Produces<ReadDraft>().Refuses(400, 413, 415);

    private static async Task<IResult> ReadAsync(HttpContext http, CancellationToken cancel, string name = "draft")
    {
        ReadOnlyMemory<byte> bytes = await http.Request.BytesAsync(ReadingLimits.Usual.MaxBytes, AnyFile, cancel);
        Parsed<DraftFileReading> read = DraftFiles.FormOf(bytes.Span) == DraftFileForm.Picture ? OfPicture(bytes) : DraftFiles.Read(bytes.Span, name);
        if (!read.TryGet(out DraftFileReading? reading)) return Answers.BadInput(read.Problem!);
        string wif = Encoding.UTF8.GetString(DraftFiles.Write(reading.Woven, "draft.wif").Value);
        return Results.Json(new ReadDraft(wif, reading.Warnings), StudioJson.Default.ReadDraft);
    }

    private static Parsed<DraftFileReading> OfPicture(ReadOnlyMemory<byte> bytes)
    {
        Parsed<DrawdownPictureReading> picture = DrawdownPicture.Read(bytes.ToArray());
        if (!picture.TryGet(out DrawdownPictureReading? seen)) return picture.Problem!;
        Parsed<Draft> fewest = FewestDraft.Of(seen.Drawdown);
        if (!fewest.TryGet(out Draft? draft)) return fewest.Problem!;
        string found = $"The picture shows {draft.Ends} ends and {draft.Picks} picks{(seen.HasGridLines ? " between grid lines" : "")}; see that this is so.";
        return new DraftFileReading(WovenDraft.Of(draft), DraftFileForm.Picture, [found]);
    }
}
