using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;

namespace Clothwright.Client.Shelf;

/// <summary>The shelf as the studio keeps it, or as it was last seen where the studio does not answer.</summary>
public sealed class ShelfRoom
{
    private const string YarnAddress = "api/shelf";
    private const string PhotoAddress = "api/shelf/photos";
    private const string ReservedAddress = "api/shelf/reservations";
    private const string SheetAddress = "api/worksheets";

    /// <summary>Raised after every change.</summary>
    public event EventHandler? Changed;

    /// <summary>Every yarn with its version, by name.</summary>
    public ImmutableArray<Kept<YarnEntry>> Yarns { get; private set; } = [];

    /// <summary>What is known of every photo.</summary>
    public ImmutableArray<YarnPhoto> Photos { get; private set; } = [];

    /// <summary>Everything that is set aside.</summary>
    public ImmutableArray<Kept<YarnReservation>> Reserved { get; private set; } = [];

    /// <summary>The worksheets of the studio.</summary>
    public ImmutableArray<WorksheetSummary> Sheets { get; private set; } = [];

    /// <summary>Whether the studio does not answer; what is shown was seen earlier then.</summary>
    public bool IsAway { get; private set; }

    /// <summary>When what is shown was seen; empty while the studio answers.</summary>
    public string SeenAt => IsAway ? ShelfScript.SeenAt(YarnAddress) : "";

    /// <summary>Reads everything anew.</summary>
    public async Task OpenAsync()
    {
        IsAway = false;
        string yarns = await ReadAsync(YarnAddress);
        string photos = await ReadAsync(PhotoAddress);
        string reserved = await ReadAsync(ReservedAddress);
        string sheets = await ReadAsync(SheetAddress);
        Yarns = yarns.Length > 0 && ShelfText.ReadShelf(Encoding.UTF8.GetBytes(yarns)).TryGet(out ImmutableArray<Kept<YarnEntry>> read) ? read : [];
        Photos = photos.Length > 0 ? [.. JsonSerializer.Deserialize(photos, StudioJson.Default.YarnPhotoArray) ?? []] : [];
        Reserved = reserved.Length > 0 ? [.. JsonSerializer.Deserialize(reserved, StudioJson.Default.KeptYarnReservationArray) ?? []] : [];
        Sheets = sheets.Length > 0 ? [.. JsonSerializer.Deserialize(sheets, StudioJson.Default.WorksheetSummaryArray) ?? []] : [];
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Whether a yarn of this id is on the shelf.</summary>
    /// <param name="id">The id.</param>
    public bool Has(string id) => Yarns.Any(y => y.Item.Id == id);

    /// <summary>What is left of a yarn and not set aside; null where its stock cannot be reckoned.</summary>
    /// <param name="yarn">The yarn.</param>
    public FreeStock? FreeOf(Yarn yarn)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        try
        {
            return FreeStock.Of(StockReckoning.OnShelf(yarn), [.. Reserved.Where(r => r.Item.YarnId == yarn.Id).Select(r => (TitleOf(r.Item.WorksheetId), Core.Quantities.Mass.FromGrams(r.Item.Grams)))]);
        }
        catch (Core.Quantities.InputProblemException)
        {
            return null;
        }
    }

    /// <summary>Name of a worksheet; its id where it is not known.</summary>
    /// <param name="sheet">Its id.</param>
    public string TitleOf(string sheet) => Sheets.FirstOrDefault(s => s.Id == sheet)?.Title ?? sheet;

    /// <summary>Keeps a yarn.</summary>
    /// <param name="yarn">The yarn.</param>
    /// <param name="basedOn">The version it was made from; 0 for a new one.</param>
    public Task<ShelfAnswer> KeepAsync(YarnEntry yarn, int basedOn)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        return ChangeAsync("PUT", AddressOf(yarn.Id), Encoding.UTF8.GetString(ShelfText.Write(yarn)), basedOn == 0 ? "*" : Number(basedOn));
    }

    /// <summary>Takes a yarn off the shelf.</summary>
    /// <param name="yarn">The yarn with the version that was seen.</param>
    public Task<ShelfAnswer> RemoveAsync(Kept<YarnEntry> yarn)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        return ChangeAsync("DELETE", AddressOf(yarn.Item.Id), "", Number(yarn.Version));
    }

    /// <summary>Sets yarn aside for a worksheet, or changes how much.</summary>
    /// <param name="reservation">What is set aside.</param>
    public Task<ShelfAnswer> ReserveAsync(YarnReservation reservation)
    {
        ArgumentNullException.ThrowIfNull(reservation);
        int held = Reserved.FirstOrDefault(r => r.Item.YarnId == reservation.YarnId && r.Item.WorksheetId == reservation.WorksheetId)?.Version ?? 0;
        return ChangeAsync("PUT", AddressOf(reservation), JsonSerializer.Serialize(reservation, StudioJson.Default.YarnReservation), held == 0 ? "*" : Number(held));
    }

    /// <summary>Lets yarn go that was set aside.</summary>
    /// <param name="reservation">What is set aside.</param>
    public Task<ShelfAnswer> ReleaseAsync(Kept<YarnReservation> reservation)
    {
        ArgumentNullException.ThrowIfNull(reservation);
        return ChangeAsync("DELETE", AddressOf(reservation.Item), "", Number(reservation.Version));
    }

    /// <summary>Sends the photo that was chosen in a field.</summary>
    /// <param name="yarn">Id of the yarn.</param>
    /// <param name="field">Id of the field.</param>
    public async Task<ShelfAnswer> AddPhotoAsync(string yarn, string field)
    {
        var answer = ShelfAnswer.Of(await ShelfScript.SendPhotoAsync(field, $"/{AddressOf(yarn)}/photos"));
        if (answer.IsDone) await OpenAsync();
        return answer;
    }

    /// <summary>Removes a photo.</summary>
    /// <param name="photo">Its id.</param>
    public Task<ShelfAnswer> RemovePhotoAsync(string photo) => ChangeAsync("DELETE", $"{PhotoAddress}/{Uri.EscapeDataString(photo)}", "", "");

    private static string AddressOf(string yarn) => $"{YarnAddress}/yarns/{Uri.EscapeDataString(yarn)}";

    private static string AddressOf(YarnReservation reservation) => $"{AddressOf(reservation.YarnId)}/reservations/{Uri.EscapeDataString(reservation.WorksheetId)}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private async Task<ShelfAnswer> ChangeAsync(string method, string address, string body, string version)
    {
        ShelfAnswer answer = await ShelfAnswer.AskAsync(method, address, body, version);
        if (answer.IsDone || answer.IsAway || answer.IsConflict) await OpenAsync();
        return answer;
    }

    private async Task<string> ReadAsync(string address)
    {
        ShelfAnswer answer = await ShelfAnswer.AskAsync("GET", address);
        if (answer.IsDone)
        {
            ShelfScript.KeepSeen(address, answer.Text);
            return answer.Text;
        }

        IsAway = true;
        return ShelfScript.Seen(address);
    }
}
