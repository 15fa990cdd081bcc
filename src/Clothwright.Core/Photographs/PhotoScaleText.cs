using System.Globalization;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Photographs;

/// <summary>Reads the scale of a photograph as a person types it.</summary>
public static class PhotoScaleText
{
    /// <summary>Reads <c>50mm=612px</c>, <c>2 in = 530 px</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="where">Field path for a problem.</param>
    public static Parsed<PhotoScale> Parse(string text, string where = "scale")
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] sides = text.Split('=', StringSplitOptions.TrimEntries);
        if (sides.Length != 2) return Problem(text, where);
        Parsed<Length> length = LengthText.Parse(sides[0], where);
        if (!length.TryGet(out Length marked)) return length.Problem!;
        string pixels = sides[1].EndsWith("px", StringComparison.OrdinalIgnoreCase) ? sides[1][..^2].TrimEnd() : sides[1];
        bool read = double.TryParse(pixels, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double count);
        return read && count >= 1 && marked > Length.Zero ? PhotoScale.FromLength(marked, count) : Problem(text, where);
    }

    /// <summary>Reads places in pixels, each <c>x,y</c>, with spaces between.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="count">How many places there must be.</param>
    /// <param name="where">Field path for a problem.</param>
    public static Parsed<PhotoPoint[]> Places(string text, int count, string where)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var places = new List<PhotoPoint>();
        foreach (string word in words)
        {
            string[] parts = word.Split(',');
            if (parts.Length == 2 && Number(parts[0], out double x) && Number(parts[1], out double y)) places.Add(new PhotoPoint(x, y));
        }

        return places.Count == count && words.Length == count
            ? places.ToArray()
            : new InputProblem($"\"{text}\" are not {count} places in the picture.", where, $"Write {count} times x,y in pixels, for example \"{string.Join(' ', Enumerable.Range(0, count).Select(i => $"{100 + 250 * (i % 2)},{80 + 200 * (i / 2)}"))}\".");
    }

    private static bool Number(string text, out double value) => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);

    private static InputProblem Problem(string text, string where) =>
        new($"\"{text}\" is no scale.", where, "Write a length on the ruler and the pixels it covers, for example 50mm=612px.") { Text = text, Position = 0 };
}
