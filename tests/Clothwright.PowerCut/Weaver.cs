using System.Net;
using System.Text;
using System.Text.Json;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.PowerCut;

/// <summary>Saves one worksheet without a pause and remembers every save that was acknowledged.</summary>
internal sealed class Weaver(string id, Worksheet sample)
{
    private int _edit;
    private volatile int _count;

    public string Id { get; } = id;

    /// <summary>How many saves were acknowledged; may be read while it saves.</summary>
    public int Count => _count;

    /// <summary>The document of each acknowledged save, by its version.</summary>
    public SortedDictionary<int, string> Acknowledged { get; } = [];

    /// <summary>Documents that were sent without an answer; each may or may not have been kept.</summary>
    public HashSet<string> Unanswered { get; } = [];

    /// <summary>Saves until the server is gone.</summary>
    public async Task SaveAsync(HttpClient http)
    {
        int last = Acknowledged.Count == 0 ? 0 : Acknowledged.Keys.Max();
        while (true)
        {
            string document = Encoding.UTF8.GetString(WorksheetWriter.Write(sample with { Title = Id, Note = $"edit {++_edit} {new string('~', _edit % 97 * 40)}" }));
            using var request = new HttpRequestMessage(HttpMethod.Put, $"api/worksheets/{Id}") { Content = new StringContent(document, Encoding.UTF8, "application/json") };
            if (last == 0) request.Headers.TryAddWithoutValidation("If-None-Match", "*");
            else request.Headers.TryAddWithoutValidation("If-Match", $"\"{last}\"");
            Unanswered.Add(document);
            try
            {
                using HttpResponseMessage answer = await http.SendAsync(request);
                string text = await answer.Content.ReadAsStringAsync();
                if (answer.StatusCode == HttpStatusCode.PreconditionFailed)
                {
                    // A save that was kept and never answered: go on from it.
                    last = JsonSerializer.Deserialize(text, StudioJson.Default.ProblemReport)!.CurrentVersion!.Value;
                    continue;
                }

                if (!answer.IsSuccessStatusCode) throw new InvalidOperationException($"The server refused a save of {Id}: {text}");
                last = JsonSerializer.Deserialize(text, StudioJson.Default.SavedWorksheet)!.Version;
                Acknowledged[last] = document;
                Unanswered.Remove(document);
                _count = Acknowledged.Count;
            }
            catch (Exception fault) when (fault is HttpRequestException or IOException or TaskCanceledException)
            {
                return;
            }
        }
    }
}
