using System.Text.Json;

namespace Clothwright.Client.Sheet;

/// <summary>Keeps every step of a worksheet in the browser's own store, so that undo has no end and survives a reload.</summary>
/// <remarks>A step is the whole document. Memory holds the present one only; the others are read when they are asked for.</remarks>
public sealed class StepKeeper
{
    private string _sheet = "";

    /// <summary>Step that is shown.</summary>
    public int Place { get; private set; }

    /// <summary>Newest step that is kept.</summary>
    public int Last { get; private set; }

    /// <summary>Opens the steps of a worksheet.</summary>
    /// <param name="sheet">Name under which they are kept.</param>
    /// <returns>The document at the place where she left it; null when nothing is kept.</returns>
    public async Task<string?> OpenAsync(string sheet)
    {
        _sheet = sheet;
        using JsonDocument kept = JsonDocument.Parse(await PageScript.OpenStepsAsync(sheet));
        Place = kept.RootElement.GetProperty("place").GetInt32();
        Last = kept.RootElement.GetProperty("last").GetInt32();
        return Last < 0 ? null : await PageScript.ReadStepAsync(sheet, Place);
    }

    /// <summary>Keeps a document as the next step; later steps, undone before, are given up.</summary>
    /// <param name="json">The document.</param>
    /// <param name="inPlace">Whether it takes the place of the present step.</param>
    public Task KeepAsync(string json, bool inPlace)
    {
        if (!inPlace) Place++;
        Last = Place;
        return PageScript.KeepStepAsync(_sheet, Place, json);
    }

    /// <summary>Drops the present step; the one before it is the newest then.</summary>
    /// <param name="before">The document of the step before.</param>
    public Task DropAsync(string before)
    {
        Place--;
        return KeepAsync(before, inPlace: true);
    }

    /// <summary>Begins with a document.</summary>
    /// <param name="json">The document.</param>
    public Task BeginAsync(string json)
    {
        Place = -1;
        return KeepAsync(json, inPlace: false);
    }

    /// <summary>Goes to another step.</summary>
    /// <param name="step">Its number, from 0 to <see cref="Last"/>.</param>
    /// <returns>The document.</returns>
    public async Task<string> GoAsync(int step)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(step);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(step, Last);
        Place = step;
        string json = await PageScript.ReadStepAsync(_sheet, step);
        await PageScript.KeepPlaceAsync(_sheet, step);
        return json;
    }
}
