using System.Globalization;
using System.Text.Json;
using Clothwright.Interchange.Http;

namespace Clothwright.Client.Saving;

/// <summary>Speaks with the studio's server. A server that does not answer is an answer too, never an exception.</summary>
public sealed class StudioCalls
{
    /// <summary>Whether the server answered when it was last asked.</summary>
    public bool Answers { get; private set; } = true;

    /// <summary>Address of a worksheet, without the slash at its beginning.</summary>
    /// <param name="sheet">Id of the worksheet.</param>
    public static string AddressOf(string sheet) => $"api/worksheets/{Uri.EscapeDataString(sheet)}";

    /// <summary>Reads a worksheet.</summary>
    /// <param name="sheet">Its id.</param>
    /// <param name="known">The version that is known; the answer is 304 where it still stands. 0 for none.</param>
    public Task<StudioAnswer> ReadAsync(string sheet, int known = 0) => AskAsync("GET", AddressOf(sheet), version: known == 0 ? "" : Number(known));

    /// <summary>Saves a worksheet.</summary>
    /// <param name="sheet">Its id.</param>
    /// <param name="document">The document.</param>
    /// <param name="basedOn">The version it was made from; 0 for something new.</param>
    public Task<StudioAnswer> SaveAsync(string sheet, string document, int basedOn) =>
        AskAsync("PUT", AddressOf(sheet), document, basedOn == 0 ? "*" : Number(basedOn));

    /// <summary>The worksheets; null where the server does not answer.</summary>
    /// <param name="putAway">Whether those put away are wanted.</param>
    public async Task<WorksheetSummary[]?> ListAsync(bool putAway = false)
    {
        StudioAnswer answer = await AskAsync("GET", putAway ? "api/worksheets?putAway=true" : "api/worksheets");
        return answer.IsDone ? JsonSerializer.Deserialize(answer.Text, StudioJson.Default.WorksheetSummaryArray) : null;
    }

    /// <summary>Puts a worksheet out of sight, or brings it back.</summary>
    /// <param name="sheet">Its id.</param>
    /// <param name="away">Whether it is to be out of sight.</param>
    public Task<StudioAnswer> PutAwayAsync(string sheet, bool away) =>
        away ? AskAsync("DELETE", AddressOf(sheet)) : AskAsync("POST", $"{AddressOf(sheet)}/bring-back");

    /// <summary>The saves of a worksheet, the last first; null where the server does not answer.</summary>
    /// <param name="sheet">Its id.</param>
    public async Task<WorksheetVersion[]?> HistoryAsync(string sheet)
    {
        StudioAnswer answer = await AskAsync("GET", $"{AddressOf(sheet)}/history");
        return answer.IsDone ? JsonSerializer.Deserialize(answer.Text, StudioJson.Default.WorksheetVersionArray) : null;
    }

    /// <summary>A worksheet as it was saved once.</summary>
    /// <param name="sheet">Its id.</param>
    /// <param name="version">Number of the save.</param>
    public Task<StudioAnswer> ReadSaveAsync(string sheet, int version) => AskAsync("GET", $"{AddressOf(sheet)}/history/{Number(version)}");

    /// <summary>Makes an earlier save the next version.</summary>
    /// <param name="sheet">Its id.</param>
    /// <param name="version">Number of the save.</param>
    /// <param name="seen">The version that stands.</param>
    public Task<StudioAnswer> RestoreAsync(string sheet, int version, int seen) =>
        AskAsync("POST", $"{AddressOf(sheet)}/history/{Number(version)}/restore", version: Number(seen));

    /// <summary>Asks the server for anything.</summary>
    /// <param name="method">The HTTP method.</param>
    /// <param name="address">The address, without the slash at its beginning.</param>
    /// <param name="body">What is sent, as JSON; empty for nothing.</param>
    /// <param name="version">The version that it is based on, <c>*</c> for something new, empty for none.</param>
    public async Task<StudioAnswer> AskAsync(string method, string address, string body = "", string version = "")
    {
        StudioAnswer answer = JsonSerializer.Deserialize(await PageScript.AskAsync(method, $"/{address}", body, version), SavingJson.Default.StudioAnswer)!;
        Answers = !answer.IsAway;
        return answer;
    }

    /// <summary>Sends a file to be read.</summary>
    /// <param name="address">The address, without the slash at its beginning.</param>
    /// <param name="file">Its bytes as base64.</param>
    public async Task<StudioAnswer> AskWithFileAsync(string address, string file)
    {
        StudioAnswer answer = JsonSerializer.Deserialize(await PageScript.AskWithFileAsync($"/{address}", file), SavingJson.Default.StudioAnswer)!;
        Answers = !answer.IsAway;
        return answer;
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
