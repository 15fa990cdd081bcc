using System.Text.Json;

namespace Clothwright.Client.Saving;

/// <summary>Keeps every step of a worksheet in the browser's own store, so that undo has no end and survives a reload.</summary>
/// <remarks>A step is the whole document. Memory holds the present one only; the others are read when they are asked for. Tabs share the steps.</remarks>
public sealed class StepKeeper
{
    private string _sheet = "";
    private int _revision;

    /// <summary>Step that is shown.</summary>
    public int Place { get; private set; }

    /// <summary>Newest step that is kept.</summary>
    public int Last { get; private set; }

    /// <summary>Writes that are under way.</summary>
    public int Pending { get; private set; }

    /// <summary>Opens the steps of a worksheet, or reads anew what other tabs made of them.</summary>
    /// <param name="sheet">Id of the worksheet.</param>
    /// <returns>The document at the place where she left it; null when nothing is kept.</returns>
    public async Task<string?> OpenAsync(string sheet)
    {
        StepPosition kept = JsonSerializer.Deserialize(await PageScript.OpenStepsAsync(sheet), SavingJson.Default.StepPosition)!;
        string? document = kept.Last < 0 ? null : await PageScript.ReadStepAsync(sheet, kept.Place);
        _sheet = sheet;
        (Place, Last, _revision) = (kept.Place, kept.Last, kept.Revision);
        return document;
    }

    /// <summary>Keeps a document as the next step; later steps, undone before, are given up.</summary>
    /// <param name="json">The document.</param>
    /// <param name="inPlace">Whether it takes the place of the present step.</param>
    /// <returns>Whether it was kept; not where another tab wrote since.</returns>
    public Task<bool> KeepAsync(string json, bool inPlace)
    {
        if (!inPlace) Place++;
        Last = Place;
        return WriteAsync(PageScript.KeepStepAsync(_sheet, Place, json, _revision++));
    }

    /// <summary>Drops the present step; the one before it is the newest then.</summary>
    /// <param name="before">The document of the step before.</param>
    /// <returns>Whether that was kept; not where another tab wrote since.</returns>
    public Task<bool> DropAsync(string before)
    {
        Place--;
        return KeepAsync(before, inPlace: true);
    }

    /// <summary>Goes to another step.</summary>
    /// <param name="step">Its number, from 0 to <see cref="Last"/>.</param>
    /// <returns>The document as it was kept; null where another tab wrote since.</returns>
    public async Task<string?> GoAsync(int step)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(step);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(step, Last);
        Place = step;
        string json = await PageScript.ReadStepAsync(_sheet, step);
        return await WriteAsync(PageScript.KeepPlaceAsync(_sheet, step, _revision++)) ? json : null;
    }

    /// <summary>Says to the other tabs' writes that the document has changed, though no step was made.</summary>
    /// <returns>Whether no other tab wrote since.</returns>
    public Task<bool> TouchAsync() => WriteAsync(PageScript.KeepPlaceAsync(_sheet, Place, _revision++));

    private async Task<bool> WriteAsync(Task<bool> write)
    {
        Pending++;
        try
        {
            return await write;
        }
        finally
        {
            Pending--;
        }
    }
}
