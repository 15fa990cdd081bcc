using System.Text;
using System.Text.Json;
using Clothwright.Core.Plans;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Wordings;
using Clothwright.Core.Worksheets;
using Clothwright.Drawing.Pdf;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Server.Problems;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary>What follows from a saved worksheet: plan, handout, draft.</summary>
internal static class WorksheetPageEndpoints
{
    public static void MapWorksheetPages(this RouteGroupBuilder api)
    {
        RouteGroupBuilder pages = api.MapGroup("/worksheets/{id}").WithTags("Worksheet pages");
        pages.MapGet("/plan", PlanAsync)
            .WithName("ReadPlan").WithSummary("The plan in SI numbers, the unit in each name; with workings=true how every figure came to be.").Produces<object>().Refuses(404, 422);
        pages.MapGet("/handout.pdf", HandoutAsync)
            .WithName("ReadHandout").WithSummary("The handout as PDF, on a4 or letter paper, in English (en) or German (de).").Produces(StatusCodes.Status200OK, contentType: "application/pdf").Refuses(400, 404, 422);
        pages.MapGet("/draft.wif", DraftAsync)
            .WithName("ReadDraft").WithSummary("One repeat of the weave as a WIF 1.1 file.").Produces(StatusCodes.Status200OK, contentType: "text/plain").Refuses(404, 422);
    }

    private static Task<IResult> PlanAsync(string id, Studio studio, CancellationToken cancel, bool workings = false) =>
        PlannedAsync(id, studio, (worksheet, plan) => Results.Text(PlanReport.Of(plan, worksheet.Currency, workings).ToJsonString(), "application/json"), cancel);

    private static Task<IResult> HandoutAsync(string id, Studio studio, CancellationToken cancel, string paper = "a4", string language = "en")
    {
        Parsed<PageSize> size = PageSize.Parse(paper);
        Parsed<Wording> wording = WordingText.Parse(language);
        if ((size.Problem ?? wording.Problem) is { } problem) return Task.FromResult(Answers.BadInput(problem));
        return PlannedAsync(
            id,
            studio,
            (worksheet, plan) =>
            {
                using var pdf = new MemoryStream();
                HandoutPdf.Write(HandoutComposer.Compose(plan, HandoutOptions.Of(worksheet) with { Wording = wording.Value }), pdf, size.Value);
                return Results.File(pdf.ToArray(), "application/pdf", $"{id}.pdf");
            },
            cancel);
    }

    private static Task<IResult> DraftAsync(string id, Studio studio, CancellationToken cancel) => WorksheetAsync(
        id,
        studio,
        worksheet =>
        {
            byte[] wif = DraftFiles.Write(WovenDraft.Of(worksheet.Weave.Resolve().Value.Draft), "draft.wif").Value;
            return Results.File(wif, "text/plain; charset=utf-8", $"{id}.wif");
        },
        cancel);

    private static Task<IResult> PlannedAsync(string id, Studio studio, Func<Worksheet, PlanResult, IResult> page, CancellationToken cancel) =>
        WorksheetAsync(id, studio, worksheet => page(worksheet, worksheet.Plan().Value), cancel);

    // The worksheet was read when it was saved; what it asks for may still be impossible to make.
    private static async Task<IResult> WorksheetAsync(string id, Studio studio, Func<Worksheet, IResult> page, CancellationToken cancel)
    {
        if (await studio.Worksheets.FindAsync(id, cancel) is not { } found) return Answers.NotThere("worksheet", id);
        try
        {
            return page(WorksheetReader.Read(Encoding.UTF8.GetBytes(found.Document)).Value);
        }
        catch (InputProblemException refusal)
        {
            return Answers.Problem(StatusCodes.Status422UnprocessableEntity, "Cannot be made as it stands", refusal.Problem);
        }
    }
}
