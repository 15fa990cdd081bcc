using Clothwright.Core.Quantities;
using Clothwright.Interchange.Http;
using Clothwright.Storage;

namespace Clothwright.Server.Problems;

/// <summary>The answers that every resource gives in the same way.</summary>
internal static class Answers
{
    public static IResult Problem(ProblemReport report) => Results.Json(report, StudioJson.Default.ProblemReport, ProblemReport.MediaType, report.Status);

    public static IResult Problem(int status, string title, InputProblem problem) => Problem(ProblemReport.Of(problem, status, title));

    public static IResult BadInput(InputProblem problem) => Problem(StatusCodes.Status400BadRequest, "Cannot be used", problem);

    public static IResult NotThere(string what, string id) => Problem(
        StatusCodes.Status404NotFound, "Not there", new InputProblem($"There is no {what} \"{id}\".", "address", $"Take the address of a {what} from its list."));

    public static IResult Conflict(string what, int current) => Problem(ProblemReport.Of(
        new InputProblem($"The {what} was saved again since: version {current} stands now.", "If-Match", $"Read it again, make the change on version {current}, and send If-Match: \"{current}\"."),
        StatusCodes.Status412PreconditionFailed,
        "Another save came first") with
    { CurrentVersion = current });

    /// <summary>The answer to a save: 201 for the first, 204 for another, with the new version as ETag.</summary>
    public static IResult Of(HttpContext http, SaveOutcome outcome, string what, string id, string address)
    {
        switch (outcome)
        {
            case SaveOutcome.Saved saved:
                http.Response.Headers.ETag = Requests.VersionHeaders.TagOf(saved.Version);
                return saved.Created ? Results.Created(address, null) : Results.NoContent();
            case SaveOutcome.Conflict conflict:
                return Conflict(what, conflict.CurrentVersion);
            default:
                return NotThere(what, id);
        }
    }
}
