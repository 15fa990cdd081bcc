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
            // Nothing was found under the address: say so in the same form as every other problem.
            if (http.Response is { StatusCode: StatusCodes.Status404NotFound or StatusCodes.Status405MethodNotAllowed, HasStarted: false, ContentType: null })
            {
                await Answers.Problem(http.Response.StatusCode, "Not there", new InputProblem($"{http.Request.Method} {http.Request.Path} leads nowhere.", "address", "See /api/openapi.json for what there is.")).ExecuteAsync(http);
            }
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

    [LoggerMessage(Level = LogLevel.Error, Message = "{Method} {Path} failed")]
    private partial void Slip(string method, PathString path, Exception fault);
}
