using System.Text.Json;
using Clothwright.Client.Saving;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Sheet;

public sealed partial class Desk
{
    private SheetCopy _copy = new();
    private SheetCopy? _written;
    private bool _apart;
    private bool _listening;

    /// <summary>The worksheet last worked on in this browser; on a first visit the first of the studio. Empty where the studio has none yet; the demonstration where it does not answer.</summary>
    public async Task<string> LastSheetAsync()
    {
        string last = PageScript.LastSheet();
        if (last.Length > 0) return last;
        return await studio.ListAsync() switch
        {
            [var first, ..] => first.Id,
            [] => "",
            null => DemoSheet.Id,
        };
    }

    /// <summary>Lays a worksheet on the desk as she left it.</summary>
    /// <param name="sheet">Its id.</param>
    /// <returns>Done, Gone where there is no such worksheet, Away where the studio does not answer and this browser has never seen it.</returns>
    public async Task<Opening> OpenAsync(string sheet)
    {
        Settle();
        Listen();
        if (sheet == Sheet && _json.Length > 0 && !_apart) return Opening.Done;
        string? kept = await keeper.OpenAsync(sheet);
        SheetCopy copy = await ReadCopyAsync(sheet);
        if (kept is null || !TryRead(WithArrivals(kept, keeper.Place, copy)).Succeeded)
        {
            StudioAnswer answer = await studio.ReadAsync(sheet);
            Parsed<Worksheet> read = answer.IsDone ? TryRead(answer.Text) : DemoSheet.Read();
            if (!answer.IsDone && !(answer.IsAway && sheet == DemoSheet.Id)) return answer.IsAway ? Opening.Away : Opening.Gone;
            if (!read.TryGet(out Worksheet? opened)) return Opening.Gone;
            await BeginAsync(sheet, opened, new SheetCopy { Title = opened.Title, Version = answer.IsDone ? answer.Version : 0, Document = Json(opened) });
        }
        else
        {
            Lay(sheet, copy, WithArrivals(kept, keeper.Place, copy));
        }

        PageScript.UseSheet(sheet);
        _ = ExchangeAsync();
        _ = unsent.SendAsync(except: sheet);
        return Opening.Done;
    }

    /// <summary>Begins a new worksheet; the studio gets it as soon as it answers.</summary>
    /// <param name="worksheet">The decisions it begins with.</param>
    /// <returns>Its id.</returns>
    public async Task<string> BeginAsync(Worksheet worksheet)
    {
        ArgumentNullException.ThrowIfNull(worksheet);
        Settle();
        Listen();
        string sheet = Guid.CreateVersion7().ToString("N");
        await keeper.OpenAsync(sheet);
        await BeginAsync(sheet, worksheet, new SheetCopy { Title = worksheet.Title, Unsent = true });
        PageScript.UseSheet(sheet);
        _ = ExchangeAsync();
        return sheet;
    }

    /// <summary>Lays a worksheet on the desk that is neither kept nor sent: to try something out.</summary>
    /// <param name="worksheet">The decisions.</param>
    public void TryOut(Worksheet worksheet)
    {
        _apart = true;
        Use(worksheet, Json(worksheet));
    }

    private async Task BeginAsync(string sheet, Worksheet worksheet, SheetCopy copy)
    {
        Lay(sheet, copy, Json(worksheet));
        await KeepCopyAsync();
        await KeepAsync(_json, () => keeper.KeepAsync(_json, inPlace: false));
    }

    private void Lay(string sheet, SheetCopy copy, string json)
    {
        EndRun();
        Sheet = sheet;
        _copy = copy;
        _apart = _refused = false;
        _agreed = json;
        Question = null;
        Refusal = null;
        CameIn = [];
        Use(Read(json), json);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private void Listen()
    {
        if (_listening) return;
        _listening = true;
        PageScript.Listen(sheet => _ = HeardAsync(sheet));
        _ = LookAgainAsync();
    }

    private static async Task<SheetCopy> ReadCopyAsync(string sheet)
    {
        string json = await PageScript.ReadCopyAsync(sheet);
        return json.Length == 0 ? new SheetCopy() : JsonSerializer.Deserialize(json, SavingJson.Default.SheetCopy)!;
    }

    private Task KeepCopyAsync()
    {
        _written = _copy;
        return PageScript.KeepCopyAsync(Sheet, JsonSerializer.Serialize(_copy, SavingJson.Default.SheetCopy));
    }
}
