using Clothwright.Interchange.Http;

namespace Clothwright.Server.Endpoints;

/// <summary>Says in the API's description which refusals an address gives.</summary>
internal static class Refusals
{
    public static RouteHandlerBuilder Refuses(this RouteHandlerBuilder route, params ReadOnlySpan<int> statuses)
    {
        foreach (int status in statuses) route.Produces<ProblemReport>(status, ProblemReport.MediaType);
        return route;
    }
}
