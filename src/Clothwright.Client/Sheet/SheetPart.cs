using Clothwright.Client.Texts;
using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Workings;
using Clothwright.Core.Worksheets;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Sheet;

/// <summary>A part of the page that shows the worksheet and follows it.</summary>
public abstract class SheetPart : ComponentBase, IDisposable
{
    /// <summary>The desk.</summary>
    [Inject]
    protected Desk Desk { get; set; } = null!;

    /// <summary>The texts.</summary>
    [Inject]
    protected Phrases Phrases { get; set; } = null!;

    /// <summary>The decisions.</summary>
    protected Worksheet Worksheet => Desk.Worksheet;

    /// <summary>What follows from them.</summary>
    protected PlanResult Plan => Desk.Plan;

    /// <summary>Units in which she reads.</summary>
    protected UnitStyle Units => Desk.Units;

    /// <inheritdoc />
    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Stops following the worksheet.</summary>
    /// <param name="disposing">Whether this is called by <see cref="Dispose()"/>.</param>
    protected virtual void Dispose(bool disposing)
    {
        if (disposing) Desk.Changed -= Follow;
    }

    /// <inheritdoc />
    protected override void OnInitialized() => Desk.Changed += Follow;

    /// <summary>A quantity in her units.</summary>
    protected string Text<T>(T value)
        where T : struct, IQuantity<T> => Phrases.Told(QuantityText.Format(T.Kind, value.BaseValue, Units));

    /// <summary>A figure of the plan in her units.</summary>
    protected string Text(IDerived figure) => Phrases.Told(FigureText.Of(figure.Working, Units, Worksheet.Currency));

    /// <summary>A quantity as it is decided on: without the zeros that only a reckoned figure needs.</summary>
    protected string Written<T>(T value)
        where T : struct, IQuantity<T>
    {
        string[] parts = Text(value).Split(' ', 2);
        if (parts[0].Contains('.', StringComparison.Ordinal)) parts[0] = parts[0].TrimEnd('0').TrimEnd('.');
        return string.Join(' ', parts);
    }

    /// <summary>A sley in words.</summary>
    protected string SleyText(Sley sley)
    {
        ArgumentNullException.ThrowIfNull(sley);
        return Phrases.With(sley.IsEven ? "sley.even" : "sley.uneven", ("sley", sley.IsEven ? Text(Whole.FromCount(sley[0])) : sley.ToString()));
    }

    private void Follow(object? sender, EventArgs change) => _ = InvokeAsync(StateHasChanged);
}
