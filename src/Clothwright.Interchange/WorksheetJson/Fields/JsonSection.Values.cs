using System.Globalization;
using System.Text.Json;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.WorksheetJson.Fields;

internal sealed partial class JsonSection
{
    /// <summary>A text that has to be there and is not empty.</summary>
    /// <param name="field">Its name.</param>
    /// <param name="example">What could stand there.</param>
    public string Text(string field, string example)
    {
        string text = OptionalText(field) ?? throw Missing(field, $"\"{field}\": \"{example}\"");
        return text.Trim().Length > 0 ? text : throw Problem(field, $"\"{field}\" is empty.", $"Write for example \"{field}\": \"{example}\".");
    }

    /// <summary>A text; null if it is not there.</summary>
    public string? OptionalText(string field) => OptionalText(field, WorksheetReader.LongestText);

    /// <summary>A text of a length of its own; null if it is not there.</summary>
    /// <param name="field">Its name.</param>
    /// <param name="longest">The most characters.</param>
    public string? OptionalText(string field, int longest) => TryGet(field, out JsonElement value) ? TextOf(value, field, longest) : null;

    /// <summary>True or false; the given value if it is not there.</summary>
    public bool Flag(string field, bool otherwise) => !TryGet(field, out JsonElement value) ? otherwise : value.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => throw Problem(field, $"{Quote(value)} is neither true nor false.", $"Write \"{field}\": true or \"{field}\": false."),
    };

    /// <summary>A whole number within limits; the given value if it is not there.</summary>
    public int Whole(string field, int low, int high, int? otherwise = null)
    {
        if (!TryGet(field, out JsonElement value))
        {
            return otherwise ?? throw Missing(field, $"\"{field}\": {Math.Max(low, 1).ToString(CultureInfo.InvariantCulture)}");
        }

        return WholeOf(value, At(field), low, high);
    }

    /// <summary>A whole number within limits, wherever it stands.</summary>
    public static int WholeOf(JsonElement value, string where, int low, int high) =>
        value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out int number) && number >= low && number <= high
            ? number
            : throw Refuse($"{Quote(value)} cannot be used here.", where, $"Write a whole number from {low} to {high}.");

    /// <summary>A number within limits; null if it is not there.</summary>
    /// <param name="field">Its name.</param>
    /// <param name="low">Least; not reached itself when <paramref name="above"/> is set.</param>
    /// <param name="high">Greatest.</param>
    /// <param name="above">Whether the number has to be above <paramref name="low"/>.</param>
    public double? OptionalNumber(string field, double low, double high, bool above = false)
    {
        if (!TryGet(field, out JsonElement value)) return null;
        if (value.ValueKind == JsonValueKind.Number
            && value.TryGetDouble(out double number)
            && double.IsFinite(number)
            && (above ? number > low : number >= low)
            && number <= high)
        {
            return number;
        }

        string from = (above ? "above " : "from ") + low.ToString(CultureInfo.InvariantCulture);
        string what = value.ValueKind == JsonValueKind.Number ? $"\"{field}\" is {Quote(value)}." : $"{Quote(value)} is not a number.";
        throw Problem(field, what, $"Write a number {from} up to {high.ToString(CultureInfo.InvariantCulture)}, without quotation marks, for example \"{field}\": {Example(low, high)}.");
    }

    /// <summary>A share written in hundredths; null if it is not there.</summary>
    /// <param name="field">Its name, ending in <c>Percent</c>.</param>
    /// <param name="low">Least, in hundredths.</param>
    /// <param name="high">Greatest, in hundredths.</param>
    public Ratio? OptionalPercent(string field, double low, double high) =>
        OptionalNumber(field, low, high) is { } percent ? Ratio.FromPercent(percent) : null;

    /// <summary>One of a set of words; the given value if it is not there.</summary>
    /// <param name="field">Its name.</param>
    /// <param name="words">The words and what they mean.</param>
    /// <param name="otherwise">The value if it is not there; null if it has to be.</param>
    public T Word<T>(string field, WordList<T> words, T? otherwise = null)
        where T : struct, Enum
    {
        if (OptionalText(field) is not { } text) return otherwise ?? throw Missing(field, $"\"{field}\": \"{words.All[0]}\"");
        return words.Find(text) ?? throw Problem(
            field,
            $"\"{Shorten(text)}\" is not known here.",
            words.Nearest(text) is { } nearest
                ? $"Write \"{nearest}\" if that is what is meant; the words are {string.Join(", ", words.All)}."
                : $"Write one of {string.Join(", ", words.All)}.");
    }

    private string TextOf(JsonElement value, string field, int longest = WorksheetReader.LongestText)
    {
        if (value.ValueKind != JsonValueKind.String) throw Problem(field, $"{Quote(value)} is not a text.", "Put it between quotation marks.");
        string text = value.GetString()!;
        // Not every database can keep it.
        if (text.Contains('\0', StringComparison.Ordinal)) throw Problem(field, "The text holds the character U+0000, which nobody can read.", "Take it out.");
        return text.Length <= longest
            ? text
            : throw Problem(field, $"The text is {text.Length} characters long.", $"Keep it within {longest} characters.");
    }

    private static string Example(double low, double high)
    {
        double middle = high > 1000 ? low + 10 : (low + high) / 2;
        return Math.Clamp(Math.Round(middle), low, high).ToString(CultureInfo.InvariantCulture);
    }
}
