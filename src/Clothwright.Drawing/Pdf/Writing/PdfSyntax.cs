using System.Globalization;
using System.Text;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>Small pieces of PDF syntax (ISO 32000-1, section 7.3).</summary>
internal static class PdfSyntax
{
    /// <summary>A text that people read: plain if it is ASCII, else UTF-16 in hexadecimal digits.</summary>
    /// <param name="text">The text.</param>
    public static string Text(string text)
    {
        if (text.Any(c => c is < ' ' or > '~')) return $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";
        string escaped = text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("(", "\\(", StringComparison.Ordinal).Replace(")", "\\)", StringComparison.Ordinal);
        return $"({escaped})";
    }

    /// <summary>A reference to an object.</summary>
    /// <param name="number">Number of the object.</param>
    public static string Reference(int number) => string.Create(CultureInfo.InvariantCulture, $"{number} 0 R");

    /// <summary>References to objects, with blanks between.</summary>
    /// <param name="numbers">Numbers of the objects.</param>
    public static string References(IEnumerable<int> numbers) => string.Join(' ', numbers.Select(Reference));

    /// <summary>A number with at most four decimals.</summary>
    /// <param name="value">The number.</param>
    public static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A moment as a PDF date in coordinated universal time.</summary>
    /// <param name="moment">The moment.</param>
    public static string Date(DateTimeOffset moment) => moment.UtcDateTime.ToString("'(D:'yyyyMMddHHmmss'Z)'", CultureInfo.InvariantCulture);
}
