using Clothwright.Core.Quantities;
using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/shelf/reservations</c>: yarn set aside for worksheets.</summary>
internal static class ReservationEndpoints
{
    public static void MapReservations(this RouteGroupBuilder api)
    {
        RouteGroupBuilder shelf = api.MapGroup("/shelf").WithTags("Shelf");
        shelf.MapGet("/reservations", ListAsync).WithName("ListReservations").WithSummary("Everything that is set aside, with its versions.").Produces<Kept<YarnReservation>[]>();
        shelf.MapPut("/yarns/{id}/reservations/{worksheet}", KeepAsync)
            .WithName("KeepReservation").WithSummary("Sets yarn aside for a worksheet (If-None-Match: *), or changes how much (If-Match).")
            .Accepts<YarnReservation>("application/json").Produces(StatusCodes.Status201Created).Produces(StatusCodes.Status204NoContent).Refuses(400, 404, 412, 413, 415, 428);
        shelf.MapDelete("/yarns/{id}/reservations/{worksheet}", RemoveAsync).WithName("RemoveReservation").WithSummary("Lets yarn go that was set aside.").Produces(StatusCodes.Status204NoContent).Refuses(404, 412, 428);
    }

    private static async Task<IResult> ListAsync(Studio studio, CancellationToken cancel) =>
        Results.Json(await studio.Reservations.ListAsync(cancel), StudioJson.Default.KeptYarnReservationArray);

    private static async Task<IResult> KeepAsync(string id, string worksheet, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (!http.Request.TryBasedOn(out int? basedOn, out IResult refusal)) return refusal;
        ReadOnlyMemory<byte> body = await http.Request.BytesAsync(UploadLimits.RecordBytes, "application/json", cancel);
        YarnReservation reservation = RecordText.Read(body.Span, StudioJson.Default.YarnReservation).Value;
        RequestBodies.SameId(RequestBodies.Sound(id), reservation.YarnId);
        if (RequestBodies.Sound(worksheet) != reservation.WorksheetId)
        {
            throw new InputProblemException(new InputProblem($"The address says \"{worksheet}\" and the body \"{reservation.WorksheetId}\".", "worksheetId", "Send it to the address of its worksheet."));
        }

        return Answers.Of(http, await studio.Reservations.KeepAsync(reservation, basedOn, cancel), "reservation", $"{id} for {worksheet}", $"/api/shelf/yarns/{Uri.EscapeDataString(id)}/reservations/{Uri.EscapeDataString(worksheet)}");
    }

    private static async Task<IResult> RemoveAsync(string id, string worksheet, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (!http.Request.TrySeen(out int seen, out IResult refusal)) return refusal;
        return Answers.Of(http, await studio.Reservations.RemoveAsync(id, worksheet, seen, cancel), "reservation", $"{id} for {worksheet}", "");
    }
}
