using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Http;

/// <summary>Reads the JSON of a request, with the place and the mend of what cannot be read.</summary>
public static class RecordText
{
    /// <summary>How deep objects and lists may stand within each other.</summary>
    public const int DeepestNesting = 16;

    /// <summary>Reads a record.</summary>
    /// <typeparam name="T">The record.</typeparam>
    /// <param name="utf8">The text.</param>
    /// <param name="form">How the record is written, from <see cref="StudioJson"/>.</param>
    public static Parsed<T> Read<T>(ReadOnlySpan<byte> utf8, JsonTypeInfo<T> form)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(form);
        try
        {
            return JsonSerializer.Deserialize(utf8, form) is { } record ? record : new InputProblem("null stands where a record belongs.", "file", "Write the fields between { and }.");
        }
        catch (JsonException fault)
        {
            return Malformed(fault);
        }
    }

    /// <summary>What is wrong with a text that is no JSON, or not the JSON that belongs there.</summary>
    /// <param name="fault">What the reader found.</param>
    public static InputProblem Malformed(JsonException fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        string reason = fault.Message.Split(" LineNumber:", 2)[0].Split(" Path:", 2)[0].TrimEnd('.', ' ');
        string place = fault.Path is { Length: > 2 } path && path.StartsWith("$.", StringComparison.Ordinal)
            ? path[2..]
            : $"line {(fault.LineNumber ?? 0) + 1}, byte {(fault.BytePositionInLine ?? 0) + 1}";
        return new InputProblem($"The text cannot be read: {reason}.", place, "Put this place right: look for a wrong or missing field, comma, quotation mark or bracket.");
    }

    internal static Parsed<T> Read<T>(ReadOnlyMemory<byte> utf8, Func<JsonElement, T> read)
        where T : notnull
    {
        try
        {
            using var document = JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = DeepestNesting, AllowDuplicateProperties = false });
            return read(document.RootElement);
        }
        catch (JsonException fault)
        {
            return Malformed(fault);
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }
}
