using System.Text.Json;
using Clothwright.Interchange.Http;

namespace Clothwright.Client.Shelf;

/// <summary>What the studio's server answered.</summary>
/// <param name="Status">The HTTP status; 0 where it did not answer.</param>
/// <param name="Version">The version it named; 0 for none.</param>
/// <param name="Text">The body.</param>
public sealed record ShelfAnswer(int Status, int Version, string Text)
{
    /// <summary>Whether the server does not answer.</summary>
    public bool IsAway => Status == 0;

    /// <summary>Whether it did what was asked.</summary>
    public bool IsDone => Status is >= 200 and < 300;

    /// <summary>Whether another save came first.</summary>
    public bool IsConflict => Status == 412;

    /// <summary>Asks the studio's server.</summary>
    /// <param name="method">The HTTP method.</param>
    /// <param name="address">The address, without the slash at its beginning.</param>
    /// <param name="body">What is sent, as JSON; empty for nothing.</param>
    /// <param name="version">The version that it is based on, <c>*</c> for something new, empty for none.</param>
    public static async Task<ShelfAnswer> AskAsync(string method, string address, string body = "", string version = "")
    {
        await ShelfScript.LoadAsync();
        return Of(await ShelfScript.AskAsync(method, $"/{address}", body, version));
    }

    /// <summary>Reads what the script says of an answer.</summary>
    /// <param name="json">The answer as JSON.</param>
    public static ShelfAnswer Of(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        JsonElement answer = document.RootElement;
        return new ShelfAnswer(answer.GetProperty("status").GetInt32(), answer.GetProperty("version").GetInt32(), answer.GetProperty("text").GetString() ?? "");
    }

    /// <summary>The problem that was reported, as a sentence; null where the body is none.</summary>
    public string? Problem
    {
        get
        {
            try
            {
                return JsonSerializer.Deserialize(Text, StudioJson.Default.ProblemReport)?.Detail;
            }
            catch (JsonException)
            {
                return null;
            }
        }
    }
}
