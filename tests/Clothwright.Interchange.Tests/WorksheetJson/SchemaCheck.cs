using System.Text.Json;
using System.Text.RegularExpressions;

namespace Clothwright.Interchange.Tests.WorksheetJson;

/// <summary>Holds JSON against the part of JSON Schema 2020-12 that the worksheet schema uses; any other keyword is a fault of the schema.</summary>
internal static class SchemaCheck
{
    private static readonly HashSet<string> Annotations = ["$schema", "title", "description"];

    /// <summary>Every place at which a value breaks a schema.</summary>
    public static IEnumerable<string> Faults(JsonElement schema, JsonElement value, string at = "$")
    {
        foreach (JsonProperty rule in schema.EnumerateObject())
        {
            if (Annotations.Contains(rule.Name)) continue;
            foreach (string fault in Faults(rule, schema, value, at)) yield return fault;
        }
    }

    private static IEnumerable<string> Faults(JsonProperty rule, JsonElement schema, JsonElement value, string at)
    {
        JsonElement says = rule.Value;
        switch (rule.Name)
        {
            case "type":
                return When(!IsOf(says.GetString()!, value), $"{at} is no {says}");
            case "const":
                return When(!JsonElement.DeepEquals(says, value), $"{at} is not {says}");
            case "enum":
                return When(!says.EnumerateArray().Any(e => JsonElement.DeepEquals(e, value)), $"{at} is none of {says}");
            case "pattern":
                return When(value.ValueKind == JsonValueKind.String && !Regex.IsMatch(value.GetString()!, says.GetString()!, RegexOptions.None, TimeSpan.FromSeconds(1)), $"{at} does not match {says}");
            case "minimum":
                return When(IsNumber(value) && value.GetDouble() < says.GetDouble(), $"{at} is below {says}");
            case "exclusiveMinimum":
                return When(IsNumber(value) && value.GetDouble() <= says.GetDouble(), $"{at} is not above {says}");
            case "maximum":
                return When(IsNumber(value) && value.GetDouble() > says.GetDouble(), $"{at} is above {says}");
            case "minItems":
                return When(value.ValueKind == JsonValueKind.Array && value.GetArrayLength() < says.GetInt32(), $"{at} is too short");
            case "required":
                return value.ValueKind == JsonValueKind.Object
                    ? says.EnumerateArray().Where(n => !value.TryGetProperty(n.GetString()!, out _)).Select(n => $"{at} lacks {n}")
                    : [];
            case "properties":
                return value.ValueKind == JsonValueKind.Object
                    ? says.EnumerateObject().Where(p => value.TryGetProperty(p.Name, out _)).SelectMany(p => Faults(p.Value, value.GetProperty(p.Name), $"{at}.{p.Name}"))
                    : [];
            case "additionalProperties":
                return value.ValueKind == JsonValueKind.Object
                    ? value.EnumerateObject().Where(p => !schema.GetProperty("properties").TryGetProperty(p.Name, out _)).Select(p => $"{at} has {p.Name} too many")
                    : [];
            case "items":
                return value.ValueKind == JsonValueKind.Array ? value.EnumerateArray().SelectMany((v, i) => Faults(says, v, $"{at}[{i}]")) : [];
            case "anyOf":
                return When(!says.EnumerateArray().Any(s => !Faults(s, value, at).Any()), $"{at} fits none of the choices");
            default:
                return [$"the schema uses {rule.Name}, which is not checked"];
        }
    }

    private static IEnumerable<string> When(bool broken, string fault) => broken ? [fault] : [];

    private static bool IsNumber(JsonElement value) => value.ValueKind == JsonValueKind.Number;

    private static bool IsOf(string type, JsonElement value) => type switch
    {
        "object" => value.ValueKind == JsonValueKind.Object,
        "array" => value.ValueKind == JsonValueKind.Array,
        "string" => value.ValueKind == JsonValueKind.String,
        "boolean" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
        "number" => IsNumber(value),
        "integer" => IsNumber(value) && value.TryGetInt64(out _),
        _ => throw new InvalidOperationException($"The schema names the type {type}."),
    };
}
