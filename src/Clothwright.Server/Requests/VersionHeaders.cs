using System.Globalization;
using Clothwright.Core.Quantities;
using Microsoft.Net.Http.Headers;

namespace Clothwright.Server.Requests;

/// <summary>Versions in headers (RFC 9110): ETag says which was sent, If-Match which a save is based on, If-None-Match: * that it is new.</summary>
internal static class VersionHeaders
{
    public static string TagOf(int version) => $"\"{version.ToString(CultureInfo.InvariantCulture)}\"";

    /// <summary>The version that a save is based on; null for something new.</summary>
    /// <returns>Whether the request says it; if not, <paramref name="refusal"/> is the answer.</returns>
    public static bool TryBasedOn(this HttpRequest request, out int? basedOn, out IResult refusal)
    {
        basedOn = null;
        refusal = Results.Empty;
        if (request.Headers.IfNoneMatch == "*" && request.Headers.IfMatch.Count == 0) return true;
        if (VersionIn(request.Headers.IfMatch) is { } version)
        {
            basedOn = version;
            return true;
        }

        refusal = Refusal(request.Headers.IfMatch, "Send If-Match: \"3\" with the version that was changed, or If-None-Match: * for something new.");
        return false;
    }

    /// <summary>The version that was seen last.</summary>
    /// <returns>Whether the request says it; if not, <paramref name="refusal"/> is the answer.</returns>
    public static bool TrySeen(this HttpRequest request, out int seen, out IResult refusal)
    {
        seen = VersionIn(request.Headers.IfMatch) ?? 0;
        refusal = Refusal(request.Headers.IfMatch, "Send If-Match: \"3\" with the version that was seen last.");
        return seen > 0;
    }

    /// <summary>Whether the one who asks has this version already.</summary>
    public static bool HasAlready(this HttpRequest request, int version) => request.Headers.IfNoneMatch == TagOf(version);

    private static int? VersionIn(string? header) =>
        EntityTagHeaderValue.TryParse(header, out EntityTagHeaderValue? tag) && !tag.IsWeak
        && int.TryParse(tag.Tag.AsSpan().Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out int version) && version > 0
            ? version
            : null;

    private static IResult Refusal(string? header, string mend) => string.IsNullOrEmpty(header)
        ? Problems.Answers.Problem(StatusCodes.Status428PreconditionRequired, "No version named", new InputProblem("The request does not say which version it is based on.", "If-Match", mend))
        : Problems.Answers.BadInput(new InputProblem($"{header} is no version.", "If-Match", mend));
}
