using System.Text.Json;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.WorksheetJson.Fields;

namespace Clothwright.Interchange.WorksheetJson.Sections;

/// <summary>The section <c>rates</c>: how fast the weaver works.</summary>
internal static class RatesJson
{
    public static string[] Fields { get; } = ["warpMetresWoundPerHour", "endsThreadedPerHour", "endsSleyedPerHour", "picksPerMinute"];

    public static WorkRates Read(JsonSection rates) => new()
    {
        WarpWoundPerHour = rates.OptionalNumber(Fields[0], 0, 100_000, above: true) is { } metres ? Length.FromMetres(metres) : null,
        EndsThreadedPerHour = rates.OptionalNumber(Fields[1], 0, 10_000, above: true),
        EndsSleyedPerHour = rates.OptionalNumber(Fields[2], 0, 10_000, above: true),
        PicksPerMinute = rates.OptionalNumber(Fields[3], 0, 200, above: true),
    };

    public static void Write(Utf8JsonWriter writer, WorkRates rates)
    {
        if (rates == WorkRates.Customary) return;
        writer.WriteStartObject("rates");
        if (rates.WarpWoundPerHour is { } wound) writer.Number(Fields[0], wound.Metres);
        if (rates.EndsThreadedPerHour is { } threaded) writer.Number(Fields[1], threaded);
        if (rates.EndsSleyedPerHour is { } sleyed) writer.Number(Fields[2], sleyed);
        if (rates.PicksPerMinute is { } picks) writer.Number(Fields[3], picks);
        writer.WriteEndObject();
    }
}
