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
        string place = (fault.Path ?? "").TrimStart('$').TrimStart('.');
        if (fault.Message.Split("missing required properties including:", 2) is [_, var missing])
        {
            string[] fields = [.. missing.Split('\'').Where((_, i) => i % 2 == 1)];
            return new InputProblem($"\"{string.Join("\" and \"", fields)}\" is missing.", place.Length == 0 ? fields[0] : place, $"Add it, for example \"{fields[0]}\": ….");
        }

        if (fault.Message.Contains("could not be mapped", StringComparison.Ordinal))
        {
            return new InputProblem($"There is no field called \"{place.Split('.')[^1]}\" here.", place, "Take it out, or write its name as the API describes it.");
        }

        if (place.Length > 0) return new InputProblem($"The value of \"{place}\" is of the wrong kind, or null.", place, "Write a value of the kind that the API describes, or leave the field out.");
        string reason = fault.Message.Split(" LineNumber:", 2)[0].Split(" Path:", 2)[0].TrimEnd('.', ' ');
        return new InputProblem(
            $"The text is not well-formed JSON: {reason}.",
            $"line {(fault.LineNumber ?? 0) + 1}, byte {(fault.BytePositionInLine ?? 0) + 1}",
            "Look just before this place for a missing comma, quotation mark or bracket, or one too many.");
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
