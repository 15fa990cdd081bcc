using Clothwright.Core.Quantities;
using Microsoft.AspNetCore.Http.Features;

namespace Clothwright.Server.Requests;

/// <summary>Reads what was sent, up to a named size and of a named kind.</summary>
internal static class RequestBodies
{
    /// <summary>The whole body in memory.</summary>
    /// <exception cref="BadHttpRequestException">It is too large, or of another kind.</exception>
    public static async Task<ReadOnlyMemory<byte>> BytesAsync(this HttpRequest request, int most, string mediaType, CancellationToken cancel)
    {
        request.Expect(most, mediaType);
        using var buffer = new MemoryStream();
        await request.Body.CopyToAsync(buffer, cancel);
        return buffer.GetBuffer().AsMemory(0, (int)buffer.Length);
    }

    /// <summary>Lets a body of a size and kind in, before it is read.</summary>
    /// <exception cref="BadHttpRequestException">It says itself that it is too large, or is of another kind.</exception>
    public static void Expect(this HttpRequest request, long most, string mediaType)
    {
        string given = (request.ContentType ?? "").Split(';')[0].Trim();
        if (!string.Equals(given, mediaType, StringComparison.OrdinalIgnoreCase))
        {
            throw new BadHttpRequestException($"\"{given}\" cannot be read here; {mediaType} is expected.", StatusCodes.Status415UnsupportedMediaType);
        }

        if (request.ContentLength > most)
        {
            throw new BadHttpRequestException($"The request carries {request.ContentLength} bytes; at most {most} are taken here.", StatusCodes.Status413PayloadTooLarge);
        }

        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit) limit.MaxRequestBodySize = most;
    }

    /// <summary>The id in an address, checked.</summary>
    /// <exception cref="InputProblemException">It cannot be an id.</exception>
    public static string Sound(string id) => Interchange.Http.RecordId.Parse(id, "address").Value;

    /// <summary>Refuses a body whose id is not the one of the address.</summary>
    /// <exception cref="InputProblemException">They differ.</exception>
    public static void SameId(string address, string body)
    {
        if (string.Equals(address, body, StringComparison.Ordinal)) return;
        throw new InputProblemException(new InputProblem($"The address says \"{address}\" and the body \"{body}\".", "id", $"Write \"id\": \"{address}\", or send it to the address of \"{body}\"."));
    }
}
