using System.Text.Json;
using System.Text.Json.Serialization;

namespace Clothwright.Interchange.Http;

/// <summary>How the records that server and page exchange are written: no reflection, so that the page can be trimmed.</summary>
[JsonSourceGenerationOptions(
    JsonSerializerDefaults.Web,
    UseStringEnumConverter = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(WorksheetSummary[]))]
[JsonSerializable(typeof(SavedWorksheet))]
[JsonSerializable(typeof(WorksheetVersion[]))]
[JsonSerializable(typeof(WorksheetState))]
[JsonSerializable(typeof(ReadDraft))]
[JsonSerializable(typeof(ProblemReport))]
[JsonSerializable(typeof(StudioFacts))]
[JsonSerializable(typeof(BundleManifest))]
[JsonSerializable(typeof(BundleCounts))]
[JsonSerializable(typeof(WarpingTool[]))]
[JsonSerializable(typeof(SwatchRecord))]
[JsonSerializable(typeof(Kept<SwatchRecord>[]))]
[JsonSerializable(typeof(WeavingLogEntry))]
[JsonSerializable(typeof(Kept<WeavingLogEntry>[]))]
[JsonSerializable(typeof(YarnPhoto))]
[JsonSerializable(typeof(YarnPhoto[]))]
[JsonSerializable(typeof(YarnReservation))]
[JsonSerializable(typeof(Kept<YarnReservation>[]))]
[JsonSerializable(typeof(TableRequest))]
[JsonSerializable(typeof(TableReading))]
public sealed partial class StudioJson : JsonSerializerContext;
