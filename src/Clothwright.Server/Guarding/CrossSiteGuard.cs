using Clothwright.Core.Quantities;
using Clothwright.Server.Problems;
using Microsoft.Extensions.Primitives;

namespace Clothwright.Server.Guarding;

/// <summary>Refuses writes that another site's page sends: by Sec-Fetch-Site where the browser says it, else by Origin.</summary>
/// <remarks>A program that is no browser sends neither and is let through: it needs no page's trust to do harm.</remarks>
internal sealed class CrossSiteGuard(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext http)
    {
        HttpRequest request = http.Request;
        if (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method) || !IsForeign(request)) return next(http);
        return Answers.Problem(
            StatusCodes.Status403Forbidden,
            "Sent by another site",
            new InputProblem($"This {request.Method} was sent by a page of another site.", "Origin", "Make the change on the page of this server.")).ExecuteAsync(http);
    }

    private static bool IsForeign(HttpRequest request)
    {
        StringValues site = request.Headers["Sec-Fetch-Site"];
        if (site.Count > 0 && site != "same-origin" && site != "none") return true;
        StringValues origin = request.Headers.Origin;
        return origin.Count > 0 && !string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);
    }
}
