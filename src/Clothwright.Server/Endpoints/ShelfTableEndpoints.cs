using Clothwright.Core.Quantities;
using Clothwright.Interchange.Csv;
using Clothwright.Interchange.Http;
using Clothwright.Server.Requests;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/shelf/table</c>: someone's own table of yarns, looked over first and then put on the shelf.</summary>
internal static class ShelfTableEndpoints
{
    public static void MapShelfTables(this RouteGroupBuilder api)
    {
        RouteGroupBuilder table = api.MapGroup("/shelf/table").WithTags("Shelf");
        table.MapPost("/reading", LookOverAsync)
            .WithName("LookTableOver").WithSummary("How a table of yarns seems to be meant, and what it would come to; nothing is kept.")
            .Accepts<TableRequest>("application/json").Produces<TableReading>().Refuses(400, 413, 415);
        table.MapPost("/import", BringInAsync)
            .WithName("BringTableIn").WithSummary("Puts the yarns of a table on the shelf: all of them, or none.")
            .Accepts<TableRequest>("application/json").Produces<TableReading>().Produces<TableReading>(StatusCodes.Status422UnprocessableEntity).Refuses(400, 413, 415);
    }

    private static async Task<IResult> LookOverAsync(HttpContext http, Studio studio, CancellationToken cancel)
    {
        (TableReading reading, _, _) = await ReadAsync(http, studio, cancel);
        return Results.Json(reading, StudioJson.Default.TableReading);
    }

    private static async Task<IResult> BringInAsync(HttpContext http, Studio studio, CancellationToken cancel)
    {
        (TableReading reading, YarnTableOutcome outcome, bool replace) = await ReadAsync(http, studio, cancel);
        bool refused = reading.Problems.Length > 0 || (!replace && reading.Yarns.Any(y => y.OnShelf));
        if (refused) return Results.Json(reading, StudioJson.Default.TableReading, statusCode: StatusCodes.Status422UnprocessableEntity);
        await studio.Shelf.KeepAllAsync(outcome.Yarns, cancel);
        return Results.Json(reading, StudioJson.Default.TableReading);
    }

    private static async Task<(TableReading Reading, YarnTableOutcome Outcome, bool Replace)> ReadAsync(HttpContext http, Studio studio, CancellationToken cancel)
    {
        ReadOnlyMemory<byte> body = await http.Request.BytesAsync(UploadLimits.ShelfTableBytes, "application/json", cancel);
        TableRequest request = RecordText.Read(body.Span, StudioJson.Default.TableRequest).Value;
        YarnTableSurvey survey = YarnTableSurvey.Of(request.Text, request.Mapping?.Separator).Value;
        YarnTableMapping mapping = request.Mapping ?? survey.Mapping;
        if (mapping.Columns.IsDefault) throw new InputProblemException(new InputProblem("The mapping names no columns.", "mapping.columns", "Send the mapping that the reading gave."));
        // A table that was given another separator has other columns: what was said of the old ones says nothing of them.
        if (mapping.Columns.Length != survey.Headers.Length) mapping = survey.Mapping;
        HashSet<string> taken = [.. (await studio.Shelf.ListAsync(cancel)).Select(y => y.Item.Id)];
        YarnTableOutcome outcome = YarnTableReader.Read(request.Text, mapping, taken.Contains);
        return (TableReading.Of(survey, mapping, outcome, taken.Contains), outcome, request.Replace);
    }
}
