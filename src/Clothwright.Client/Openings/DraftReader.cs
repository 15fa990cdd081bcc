using System.Text;
using System.Text.Json;
using Clothwright.Client.Saving;
using Clothwright.Client.Texts;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Http;

namespace Clothwright.Client.Openings;

/// <summary>Reads files of drafts: text forms in the page, pictures through the studio.</summary>
/// <param name="studio">The studio.</param>
/// <param name="phrases">The texts.</param>
public sealed class DraftReader(StudioCalls studio, Phrases phrases)
{
    /// <summary>Reads a file.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="base64">Its bytes as base64; none where it is too large.</param>
    public async Task<Parsed<OpenedDraft>> ReadAsync(string name, string base64)
    {
        ArgumentNullException.ThrowIfNull(base64);
        if (base64.Length == 0) return new InputProblem(phrases["file.large"], name, phrases["file.large.mend"]);
        byte[] bytes = Convert.FromBase64String(base64);
        if (DraftFiles.FormOf(bytes) != DraftFileForm.Picture) return Of(name, DraftFiles.Read(bytes, name), []);
        StudioAnswer answer = await studio.AskWithFileAsync($"api/drafts/read?name={Uri.EscapeDataString(name)}", base64);
        if (answer.IsAway) return new InputProblem(phrases["file.away"], name, phrases["file.away.mend"]);
        if (!answer.IsDone) return new InputProblem(answer.Report?.What ?? phrases["file.unread"], name, answer.Report?.Mend ?? "");
        ReadDraft read = JsonSerializer.Deserialize(answer.Text, StudioJson.Default.ReadDraft)!;
        return Of(name, DraftFiles.Read(Encoding.UTF8.GetBytes(read.Wif), name), [.. read.Warnings]);
    }

    private static Parsed<OpenedDraft> Of(string name, Parsed<DraftFileReading> read, string[] warnings)
    {
        if (!read.TryGet(out DraftFileReading? reading)) return read.Problem!;
        Draft draft = reading.Woven.Draft;
        string title = draft.Name.Length > 0 ? draft.Name : Path.GetFileNameWithoutExtension(name);
        return new OpenedDraft(name, draft with { Name = title }, [.. warnings, .. reading.Warnings]);
    }
}
