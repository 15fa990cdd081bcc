using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Client.Saving;

/// <summary>The worksheets that this browser holds; what was left unsent is sent when the studio answers again.</summary>
public sealed class UnsentSheets(StudioCalls studio)
{
    /// <summary>Every worksheet that this browser holds.</summary>
    public static async Task<ImmutableArray<HeldSheet>> ListAsync()
    {
        string[] ids = JsonSerializer.Deserialize(await PageScript.ListCopiesAsync(), SavingJson.Default.StringArray)!;
        var held = ImmutableArray.CreateBuilder<HeldSheet>(ids.Length);
        foreach (string id in ids)
        {
            if (await CopyAsync(id) is { } copy) held.Add(new HeldSheet(id, copy.Title, copy.Unsent));
        }

        return held.ToImmutable();
    }

    /// <summary>Sends every worksheet that was left unsent. One that was changed elsewhere since waits until it is opened: she is asked then.</summary>
    /// <param name="except">The worksheet on the desk, which sends itself.</param>
    public async Task SendAsync(string except)
    {
        foreach (HeldSheet sheet in await ListAsync())
        {
            if (!sheet.Unsent || sheet.Id == except || await CopyAsync(sheet.Id) is not { } copy) continue;
            if (await new StepKeeper().OpenAsync(sheet.Id) is not { } document || !copy.Arrivals.IsEmpty) continue;
            if (!WorksheetReader.Read(Encoding.UTF8.GetBytes(document)).Succeeded) continue;
            StudioAnswer answer = await studio.SaveAsync(sheet.Id, document, copy.Version);
            if (answer.IsAway) return;
            if (!answer.IsDone) continue;
            SheetCopy sent = copy with { Version = answer.Version, Document = document, Unsent = false };
            await PageScript.KeepCopyAsync(sheet.Id, JsonSerializer.Serialize(sent, SavingJson.Default.SheetCopy));
        }
    }

    private static async Task<SheetCopy?> CopyAsync(string sheet)
    {
        string json = await PageScript.ReadCopyAsync(sheet);
        return json.Length == 0 ? null : JsonSerializer.Deserialize(json, SavingJson.Default.SheetCopy);
    }
}
