using Clothwright.Core.Quantities;

namespace Clothwright.Server.Problems;

/// <summary>Turns what goes wrong into a report: what a person gave is explained, a slip of the program is logged and owned up to.</summary>
internal sealed partial class ProblemCatcher(RequestDelegate next, ILogger<ProblemCatcher> log)
{
    public async Task InvokeAsync(HttpContext http)
    {
        try
        {
            await next(http);
            if (http.Response is { HasStarted: false, ContentType: null } && Refused(http) is { } refusal) await refusal.ExecuteAsync(http);
        }
        catch (InputProblemException refusal) when (!http.Response.HasStarted)
        {
            await Answers.BadInput(refusal.Problem).ExecuteAsync(http);
        }
        catch (BadHttpRequestException fault) when (!http.Response.HasStarted)
        {
            await Answers.Problem(fault.StatusCode, "Not understood", new InputProblem(fault.Message, "request", "Send the request again as the API describes it.")).ExecuteAsync(http);
        }
        catch (OperationCanceledException) when (http.RequestAborted.IsCancellationRequested)
        {
            // Nobody waits for the answer any more.
        }
        catch (Exception fault) when (!http.Response.HasStarted)
        {
            Slip(http.Request.Method, http.Request.Path, fault);
            await Answers.Problem(
                StatusCodes.Status500InternalServerError,
                "The server slipped",
                new InputProblem("Something went wrong in the server; nothing was saved by this request.", "server", "Try again; if it happens again, the server's window says what went wrong.")).ExecuteAsync(http);
        }
    }

    // What routing refuses has no body of its own: say it in the same form as every other problem.
    private static IResult? Refused(HttpContext http) => http.Response.StatusCode switch
    {
        StatusCodes.Status404NotFound or StatusCodes.Status405MethodNotAllowed => Answers.Problem(
            http.Response.StatusCode, "Not there", new InputProblem($"{http.Request.Method} {http.Request.Path} leads nowhere.", "address", "See /api/openapi.json for what there is.")),
        StatusCodes.Status415UnsupportedMediaType => Answers.Problem(
            http.Response.StatusCode, "Not understood", new InputProblem($"\"{http.Request.ContentType}\" cannot be read here.", "Content-Type", "Send the kind that /api/openapi.json names, for example application/json.")),
        _ => null,
    };

    [LoggerMessage(Level = LogLevel.Error, Message = "{Method} {Path} failed")]
    private partial void Slip(string method, PathString path, Exception fault);
}
