using Clothwright.Client.Blanks;
using Clothwright.Client.Sheet;
using Clothwright.Client.Texts;
using Clothwright.Core.Quantities;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Bench;

/// <summary>The sentence of one thing on the bench.</summary>
public abstract class BenchBlank : ComponentBase
{
    /// <summary>The desk, for the units in which she reads.</summary>
    [Inject]
    protected Desk Desk { get; set; } = null!;

    /// <summary>The texts.</summary>
    [Inject]
    protected Phrases Phrases { get; set; } = null!;

    /// <summary>Place in its list; 0-based.</summary>
    [Parameter, EditorRequired]
    public int Index { get; set; }

    /// <summary>Takes it off the bench.</summary>
    [Parameter, EditorRequired]
    public Action Remove { get; set; } = null!;

    /// <summary>A quantity as it is decided on, in her units.</summary>
    protected string Written<T>(T value)
        where T : struct, IQuantity<T>
    {
        string[] parts = Phrases.Told(QuantityText.Format(T.Kind, value.BaseValue, Desk.StudioUnits)).Split(' ', 2);
        if (parts[0].Contains('.', StringComparison.Ordinal)) parts[0] = parts[0].TrimEnd('0').TrimEnd('.');
        return string.Join(' ', parts);
    }

    /// <summary>Reads a name.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="take">Takes it.</param>
    protected InputProblem? Name(string text, Action<string> take)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(take);
        if (string.IsNullOrWhiteSpace(text)) return new InputProblem(Phrases["bench.unnamed"], "name", Phrases["bench.unnamed.mend"]);
        take(text.Trim());
        return null;
    }

    /// <summary>Reads a whole number.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="low">The least.</param>
    /// <param name="high">The most.</param>
    /// <param name="take">Takes it.</param>
    protected static InputProblem? Whole(string text, int low, int high, Action<int> take)
    {
        ArgumentNullException.ThrowIfNull(take);
        Parsed<int> read = Reading.Whole(text, "number", low, high);
        if (read.TryGet(out int number)) take(number);
        return read.Problem;
    }

    /// <summary>Reads a length that may be left out.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="take">Takes it; null where nothing stands.</param>
    protected InputProblem? Measure(string text, Action<Length?> take)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(take);
        if (text.Trim().Length == 0)
        {
            take(null);
            return null;
        }

        Parsed<Length> read = Reading.Length(text, "length", Desk.StudioUnits);
        if (read.TryGet(out Length length)) take(length);
        return read.Problem;
    }
}
