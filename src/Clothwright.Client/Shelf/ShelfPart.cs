using Clothwright.Client.Sheet;
using Clothwright.Client.Texts;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Shelf;

/// <summary>A part of the page that shows the shelf and follows it.</summary>
public abstract class ShelfPart : ComponentBase, IDisposable
{
    /// <summary>The shelf.</summary>
    [Inject]
    protected ShelfRoom Room { get; set; } = null!;

    /// <summary>The desk, for the units in which she reads.</summary>
    [Inject]
    protected Desk Desk { get; set; } = null!;

    /// <summary>The texts.</summary>
    [Inject]
    protected Phrases Phrases { get; set; } = null!;

    /// <summary>What became of the last change, as a sentence; null for nothing to say.</summary>
    protected string? Said { get; set; }

    /// <summary>Whether <see cref="Said"/> is a refusal.</summary>
    protected bool IsRefused { get; set; }

    /// <inheritdoc />
    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Stops following the shelf.</summary>
    /// <param name="disposing">Whether this is called by <see cref="Dispose()"/>.</param>
    protected virtual void Dispose(bool disposing)
    {
        if (disposing) Room.Changed -= Follow;
    }

    /// <inheritdoc />
    protected override void OnInitialized() => Room.Changed += Follow;

    /// <summary>A quantity in her units.</summary>
    protected string Text<T>(T value)
        where T : struct, IQuantity<T> => Phrases.Told(QuantityText.Format(T.Kind, value.BaseValue, Desk.StudioUnits));

    /// <summary>A quantity as it stands in a blank: without the zeros that only a reckoned figure needs.</summary>
    protected string Written<T>(T value)
        where T : struct, IQuantity<T>
    {
        string[] parts = Text(value).Split(' ', 2);
        if (parts[0].Contains('.', StringComparison.Ordinal)) parts[0] = parts[0].TrimEnd('0').TrimEnd('.');
        return string.Join(' ', parts);
    }

    /// <summary>A figure in her units.</summary>
    protected string Text(IDerived figure) => Phrases.Told(FigureText.Of(figure.Working, Desk.StudioUnits, Desk.Worksheet.Currency));

    /// <summary>Says what became of a change.</summary>
    /// <param name="answer">What the studio answered.</param>
    /// <param name="done">Key of the sentence that says that it is done.</param>
    /// <returns>Whether it is done.</returns>
    protected bool Say(ShelfAnswer answer, string done)
    {
        ArgumentNullException.ThrowIfNull(answer);
        IsRefused = !answer.IsDone;
        Said = answer.IsDone ? Phrases[done]
            : answer.IsAway ? Phrases["shelf.away.change"]
            : answer.IsConflict ? Phrases["shelf.conflict"]
            : answer.Problem is { } problem ? Phrases.Told(problem) : Phrases["shelf.refused"];
        return answer.IsDone;
    }

    private void Follow(object? sender, EventArgs change) => _ = InvokeAsync(StateHasChanged);
}
