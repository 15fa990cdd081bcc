using System.Globalization;
using System.Text;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>Gathers PDF syntax as bytes: words, numbers and the strings that people read.</summary>
internal sealed class PdfBytes
{
    private byte[] _bytes = new byte[4096];
    private int _count;

    /// <summary>What has been written.</summary>
    public ReadOnlySpan<byte> Written => _bytes.AsSpan(0, _count);

    /// <summary>Bytes written.</summary>
    public int Count => _count;

    /// <summary>Writes syntax as it is; characters beyond Latin-1 are not part of any.</summary>
    /// <param name="syntax">The syntax.</param>
    public PdfBytes Add(string syntax)
    {
        Grow(syntax.Length);
        _count += Encoding.Latin1.GetBytes(syntax, _bytes.AsSpan(_count));
        return this;
    }

    /// <summary>Writes bytes as they are.</summary>
    /// <param name="bytes">The bytes.</param>
    public PdfBytes Add(ReadOnlySpan<byte> bytes)
    {
        Grow(bytes.Length);
        bytes.CopyTo(_bytes.AsSpan(_count));
        _count += bytes.Length;
        return this;
    }

    /// <summary>Writes a number and a blank; pages hold tens of thousands of them, so no text is made on the way.</summary>
    /// <param name="value">The number, between a thousand million below and above 0.</param>
    /// <param name="hundredths">Whether two decimals are kept, a hundredth of a point on a page, or four.</param>
    public PdfBytes Number(double value, bool hundredths = true)
    {
        long unit = hundredths ? 100 : 10_000;
        long scaled = (long)Math.Round(value * unit);
        Grow(24);
        if (scaled < 0)
        {
            _bytes[_count++] = (byte)'-';
            scaled = -scaled;
        }

        (scaled / unit).TryFormat(_bytes.AsSpan(_count), out int written, provider: CultureInfo.InvariantCulture);
        _count += written;
        long rest = scaled % unit;
        if (rest > 0) _bytes[_count++] = (byte)'.';
        for (long place = unit / 10; rest > 0; place /= 10)
        {
            _bytes[_count++] = (byte)('0' + rest / place);
            rest %= place;
        }

        _bytes[_count++] = (byte)' ';
        return this;
    }

    /// <summary>Writes a text that people read as a PDF string.</summary>
    /// <param name="text">The text; any characters.</param>
    public PdfBytes Text(string text) => Add(PdfSyntax.Text(text));

    private void Grow(int more)
    {
        if (_count + more > _bytes.Length) Array.Resize(ref _bytes, Math.Max(_bytes.Length * 2, _count + more));
    }
}
