using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Client.Sheet;

/// <summary>Writes a figure as the page shows it.</summary>
internal static class FigureText
{
    /// <summary>A figure with its unit, money with its currency.</summary>
    public static string Of(Working working, UnitStyle units, string currency) => working.Kind switch
    {
        QuantityKind.Money => $"{Sign(currency)} {working.Format(units)}",
        _ => working.Format(units),
    };

    /// <summary>The sign of a currency; its three letters where it has none that is its own.</summary>
    public static string Sign(string currency) => currency switch
    {
        "EUR" => "€",
        "GBP" => "£",
        "USD" => "$",
        _ => currency,
    };
}
