using System.Globalization;
using System.Text;
using Clothwright.Client.Shelf;
using Clothwright.Interchange.Http;

namespace Clothwright.Client.Bench;

/// <summary>The bench as the studio keeps it, or as it was last seen where the studio does not answer.</summary>
public sealed class BenchRoom
{
    private const string Address = "api/bench";

    /// <summary>Raised after every change.</summary>
    public event EventHandler? Changed;

    /// <summary>Looms, reeds, heddles and warping tools.</summary>
    public BenchDocument Bench { get; private set; } = BenchDocument.Empty;

    /// <summary>The number of its last save; 0 where none was saved yet.</summary>
    public int Version { get; private set; }

    /// <summary>Whether the studio does not answer; what is shown was seen earlier then.</summary>
    public bool IsAway { get; private set; }

    /// <summary>Whether it was read.</summary>
    public bool IsOpen { get; private set; }

    /// <summary>When what is shown was seen; empty while the studio answers.</summary>
    public string SeenAt => IsAway ? ShelfScript.SeenAt(Address) : "";

    /// <summary>Reads the bench anew.</summary>
    public async Task OpenAsync()
    {
        ShelfAnswer answer = await ShelfAnswer.AskAsync("GET", Address);
        IsAway = !answer.IsDone;
        string text = answer.IsDone ? answer.Text : ShelfScript.Seen(Address);
        if (answer.IsDone) ShelfScript.KeepSeen(Address, answer.Text);
        Version = answer.Version;
        Bench = text.Length > 0 && BenchText.Read(Encoding.UTF8.GetBytes(text)).TryGet(out BenchDocument? read) ? read : BenchDocument.Empty;
        IsOpen = true;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Saves the bench.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="basedOn">The version it was made from; 0 where none was saved yet.</param>
    public async Task<ShelfAnswer> KeepAsync(BenchDocument bench, int basedOn)
    {
        string version = basedOn == 0 ? "*" : basedOn.ToString(CultureInfo.InvariantCulture);
        ShelfAnswer answer = await ShelfAnswer.AskAsync("PUT", Address, Encoding.UTF8.GetString(BenchText.Write(bench)), version);
        if (answer.IsDone || answer.IsAway || answer.IsConflict) await OpenAsync();
        return answer;
    }
}
