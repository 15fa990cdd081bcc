using System.Text.Json;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.WorksheetJson.Fields;

/// <summary>One object of a worksheet file: knows where it stands, refuses fields it does not have, and words every problem.</summary>
internal sealed partial class JsonSection
{
    private readonly JsonElement _element;

    /// <summary>An object that may hold certain fields and no others.</summary>
    /// <param name="element">The value as it was read.</param>
    /// <param name="path">Where it stands, for example <c>pieces[0]</c>; empty for the whole file.</param>
    /// <param name="fields">Every field it may hold.</param>
    /// <exception cref="InputProblemException">It is no object, or holds another field.</exception>
    public JsonSection(JsonElement element, string path, IReadOnlyCollection<string> fields)
    {
        Path = path;
        if (element.ValueKind != JsonValueKind.Object)
        {
            throw Refuse($"{Quote(element)} stands where an object belongs.", path, $"Write the fields between {{ and }}: {string.Join(", ", fields.Take(4))} …");
        }

        _element = element;
        foreach (JsonProperty property in element.EnumerateObject())
        {
            if (fields.Contains(property.Name)) continue;
            string name = Shorten(property.Name);
            string? nearest = NearestName.Of(property.Name, fields);
            throw Refuse(
                $"There is no field called \"{name}\" here.",
                At(name),
                nearest is null ? $"Take it out, or use one of: {string.Join(", ", fields)}." : $"Write \"{nearest}\" if that is what is meant, or take it out.");
        }
    }

    /// <summary>Where the object stands.</summary>
    public string Path { get; }

    /// <summary>Where one of its fields stands.</summary>
    public string At(string field) => Path.Length == 0 ? field : $"{Path}.{field}";

    /// <summary>Whether a field is there; null counts as not there.</summary>
    public bool Has(string field) => TryGet(field, out _);

    /// <summary>A field that has to be there.</summary>
    /// <param name="field">Its name.</param>
    /// <param name="example">What could stand there, as JSON.</param>
    public JsonElement Required(string field, string example) =>
        TryGet(field, out JsonElement value) ? value : throw Missing(field, $"\"{field}\": {example}");

    /// <summary>An object within this one; null if it is not there.</summary>
    public JsonSection? OptionalSection(string field, IReadOnlyCollection<string> fields) =>
        TryGet(field, out JsonElement value) ? new JsonSection(value, At(field), fields) : null;

    /// <summary>An object that has to be there.</summary>
    public JsonSection Section(string field, IReadOnlyCollection<string> fields) =>
        OptionalSection(field, fields) ?? throw Missing(field, $"\"{field}\": {{ … }}");

    /// <summary>The objects of a list; none if it is not there.</summary>
    /// <param name="field">Its name.</param>
    /// <param name="fields">Every field that one object may hold.</param>
    public IEnumerable<JsonSection> Sections(string field, IReadOnlyCollection<string> fields) =>
        Items(field).Select((item, i) => new JsonSection(item, $"{At(field)}[{i}]", fields));

    /// <summary>The values of a list; none if it is not there.</summary>
    public IEnumerable<JsonElement> Items(string field)
    {
        if (!TryGet(field, out JsonElement value)) return [];
        return value.ValueKind == JsonValueKind.Array
            ? value.EnumerateArray()
            : throw Refuse($"{Quote(value)} stands where a list belongs.", At(field), "Write the entries between [ and ].");
    }

    /// <summary>A field, if it is there and not null.</summary>
    public bool TryGet(string field, out JsonElement value) =>
        _element.TryGetProperty(field, out value) && value.ValueKind != JsonValueKind.Null;

    /// <summary>The problem that a field is missing.</summary>
    /// <param name="field">Its name.</param>
    /// <param name="example">The line that would mend it.</param>
    public InputProblemException Missing(string field, string example) =>
        Refuse($"\"{field}\" is missing.", At(field), $"Add {example}.");

    /// <summary>A problem in a field of this object.</summary>
    public InputProblemException Problem(string field, string what, string mend) => Refuse(what, At(field), mend);

    /// <summary>A value as it would be quoted in a problem, cut short.</summary>
    public static string Quote(JsonElement element) => Shorten(element.GetRawText());

    private static string Shorten(string text)
    {
        const int longest = 40;
        string line = text.ReplaceLineEndings(" ");
        return line.Length <= longest ? line : string.Concat(line.AsSpan(0, longest), " …");
    }

    private static InputProblemException Refuse(string what, string where, string mend) =>
        new(new InputProblem(what, where.Length == 0 ? "file" : where, mend));
}
