using Clothwright.Core.Quantities;
using Clothwright.Server.Problems;

namespace Clothwright.Server.Guarding;

/// <summary>Answers only to its own names: a foreign name that was pointed here gets nothing.</summary>
internal sealed class HostGuard(RequestDelegate next, HostNames names)
{
    public Task InvokeAsync(HttpContext http)
    {
        if (names.Include(http.Request.Host.Host)) return next(http);
        return Answers.Problem(
            StatusCodes.Status421MisdirectedRequest,
            "Not at this address",
            new InputProblem($"\"{http.Request.Host.Host}\" is not a name of this server.", "Host", "Open it at the address that it said when it started.")).ExecuteAsync(http);
    }
}
