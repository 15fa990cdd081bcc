using Clothwright.Core.Quantities;
using Clothwright.Server.Problems;

namespace Clothwright.Server.Guarding;

/// <summary>Answers only to the names of this machine: a foreign name that was pointed here gets nothing.</summary>
internal sealed class LoopbackGuard(RequestDelegate next)
{
    private static readonly string[] Names = ["localhost", "127.0.0.1", "[::1]"];

    public Task InvokeAsync(HttpContext http)
    {
        if (Names.Contains(http.Request.Host.Host, StringComparer.OrdinalIgnoreCase)) return next(http);
        return Answers.Problem(
            StatusCodes.Status421MisdirectedRequest,
            "Not at this address",
            new InputProblem($"\"{http.Request.Host.Host}\" is not a name of this server.", "Host", "Open it as http://localhost, with its port.")).ExecuteAsync(http);
    }
}
