using System.Globalization;
using Clothwright.Core.Workings;

namespace Clothwright.Drawing.Pdf;

/// <summary>Tells workings apart; two that read alike all the way down are one.</summary>
internal sealed class WorkingsIdentity
{
    private readonly Dictionary<Working, int> _numbers = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, int> _byText = new(StringComparer.Ordinal);

    /// <summary>The number of a working, the same for all that read alike.</summary>
    /// <param name="working">A working.</param>
    public int NumberOf(Working working)
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
