using System.Text.Json.Nodes;
using Clothwright.Core.Workings;

namespace Clothwright.Interchange.Http;

/// <summary>Workings for a program: each number once, its inputs by their place in the list.</summary>
/// <remarks>Numbers share inputs, so written as trees the workings of a plan would grow without bound.</remarks>
public sealed class WorkingReport
{
    private readonly Dictionary<(string Label, double Value, Rule Rule), int> _places = [];
    private readonly JsonArray _list = [];

    /// <summary>One number with all that went into it; the number itself comes last.</summary>
    /// <param name="working">The number with its working.</param>
    public static JsonArray Of(Working working)
    {
        var json = new WorkingReport();
        json.Place(working);
        return json._list;
    }

    /// <summary>Every number placed so far; values in base units, the unit named by <c>measures</c>.</summary>
    public JsonArray List => _list;

    /// <summary>The place of a number in the list, which it and its inputs are added to if they are not in it.</summary>
    /// <param name="working">The number with its working.</param>
    public int Place(Working working)
    {
        ArgumentNullException.ThrowIfNull(working);
        if (_places.TryGetValue(Key(working), out int place)) return place;
        int[] inputs = [.. working.Inputs.Select(Place)];
        JsonNode entry = new JsonObject
        {
            ["label"] = working.Label,
            ["measures"] = working.Kind.ToString(),
            ["value"] = working.BaseValue,
            ["standardDeviation"] = working.Spread.StandardDeviation,
            ["rule"] = working.Rule.Name,
            ["formula"] = working.Rule.Formula,
            ["source"] = working.Rule.Source.Name,
            ["sourceKind"] = working.Rule.Source.Kind.ToString(),
            ["causes"] = new JsonArray([.. working.Spread.Shares.Select(s => new JsonObject { ["cause"] = s.Cause.Name, ["movement"] = s.Movement })]),
            ["inputs"] = new JsonArray([.. inputs.Select(i => (JsonNode)i)]),
        };
        _list.Add(entry);
        place = _list.Count - 1;
        _places.Add(Key(working), place);
        return place;
    }

    // The same number is often worked out again along another path: same name, value and rule make it one entry.
    private static (string Label, double Value, Rule Rule) Key(Working working) => (working.Label, working.BaseValue, working.Rule);
}
