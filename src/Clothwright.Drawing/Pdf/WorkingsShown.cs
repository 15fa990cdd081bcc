using System.Globalization;
using Clothwright.Core.Workings;

namespace Clothwright.Drawing.Pdf;

/// <summary>Remembers which workings an appendix has shown; two that read alike all the way down are one.</summary>
internal sealed class WorkingsShown
{
    private readonly Dictionary<Working, int> _numbers = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, int> _byText = new(StringComparer.Ordinal);
    private readonly HashSet<int> _shown = [];

    /// <summary>Whether it has been shown.</summary>
    /// <param name="working">A working.</param>
    public bool Has(Working working) => _shown.Contains(NumberOf(working));

    /// <summary>Takes note that a working is shown.</summary>
    /// <param name="working">A working.</param>
    /// <returns>Whether it had not been shown before.</returns>
    public bool IsNew(Working working) => _shown.Add(NumberOf(working));

    private int NumberOf(Working working)
    {
        if (_numbers.TryGetValue(working, out int known)) return known;
        string inputs = string.Join(',', working.Inputs.Select(NumberOf));
        string text = string.Create(
            CultureInfo.InvariantCulture,
            $"{working.Label}\n{working.Format()}\n{working.Rule.Name}\n{working.Rule.Formula}\n{working.Rule.Source}\n{working.Spread.StandardDeviation:G4}\n{inputs}");
        if (!_byText.TryGetValue(text, out int number)) _byText[text] = number = _byText.Count;
        return _numbers[working] = number;
    }
}
