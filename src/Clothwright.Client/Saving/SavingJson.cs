using System.Text.Json;
using System.Text.Json.Serialization;

namespace Clothwright.Client.Saving;

/// <summary>How what is kept in the browser is written; no reflection.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(StudioAnswer))]
[JsonSerializable(typeof(SheetCopy))]
[JsonSerializable(typeof(StepPosition))]
[JsonSerializable(typeof(string[]))]
internal sealed partial class SavingJson : JsonSerializerContext;
