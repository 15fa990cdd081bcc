using System.Buffers.Binary;
using System.Text;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>The colour profile that says how red, green and blue on a page are meant: IEC 61966-2-1 (sRGB).</summary>
/// <remarks>A matrix and curve profile as in ISO 15076-1 (ICC 4.3), made from the standard's numbers.</remarks>
internal static class SrgbProfile
{
    // Primaries of IEC 61966-2-1 adapted to D50 by the linear Bradford transform, as ISO 15076-1 asks.
    private static readonly double[] Red = [0.436066, 0.222488, 0.013916];
    private static readonly double[] Green = [0.385147, 0.716873, 0.097076];
    private static readonly double[] Blue = [0.143066, 0.060608, 0.714096];
    private static readonly double[] WhiteD50 = [0.9642, 1.0, 0.8249];
    private static readonly double[] Bradford = [1.047882, 0.022919, -0.050201, 0.029587, 0.990479, -0.017059, -0.009232, 0.015076, 0.751678];

    // Y = ((X + 0.055) ÷ 1.055)^2.4 from 0.04045 on, X ÷ 12.92 below: gamma, a, b, c, d of a curve of type 3.
    private static readonly double[] Curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045];

    /// <summary>Writes the profile.</summary>
    /// <param name="objects">Where to write.</param>
    /// <returns>The number of its stream.</returns>
    public static int Write(PdfObjects objects) => objects.AddStream("/N 3 /Alternate /DeviceRGB", Bytes());

    /// <summary>The profile as a file.</summary>
    public static byte[] Bytes()
    {
        (string Tag, byte[] Contents)[] tags =
        [
            ("desc", Words("sRGB IEC61966-2.1")),
            ("cprt", Words("No copyright, use freely")),
            ("wtpt", Fixed("XYZ ", WhiteD50)),
            ("chad", Fixed("sf32", Bradford)),
            ("rXYZ", Fixed("XYZ ", Red)),
            ("gXYZ", Fixed("XYZ ", Green)),
            ("bXYZ", Fixed("XYZ ", Blue)),
            ("rTRC", Fixed("para", Curve, curveType: 3)),
            ("gTRC", []),
            ("bTRC", []),
        ];
        int at = 128 + 4 + 12 * tags.Length;
        byte[] file = new byte[at + tags.Sum(t => Padded(t.Contents.Length))];
        BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(128), tags.Length);
        int last = 0;
        int lastLength = 0;
        for (int i = 0; i < tags.Length; i++)
        {
            (string tag, byte[] contents) = tags[i];
            if (contents.Length > 0)
            {
                contents.CopyTo(file, at);
                (last, lastLength) = (at, contents.Length);
                at += Padded(contents.Length);
            }

            Span<byte> entry = file.AsSpan(132 + 12 * i, 12); // a tag without contents of its own shares those before it
            Encoding.ASCII.GetBytes(tag, entry);
            BinaryPrimitives.WriteInt32BigEndian(entry[4..], last);
            BinaryPrimitives.WriteInt32BigEndian(entry[8..], lastLength);
        }

        Head(file);
        return file;
    }

    private static void Head(byte[] file)
    {
        BinaryPrimitives.WriteInt32BigEndian(file, file.Length);
        BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(8), 0x04300000);
        Encoding.ASCII.GetBytes("mntrRGB XYZ ", file.AsSpan(12));
        ReadOnlySpan<ushort> day = [2026, 1, 1];
        for (int i = 0; i < day.Length; i++) BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(24 + 2 * i), day[i]);
        Encoding.ASCII.GetBytes("acsp", file.AsSpan(36));
        for (int i = 0; i < 3; i++) BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(68 + 4 * i), Sixteenths(WhiteD50[i]));
    }

    private static byte[] Fixed(string type, double[] numbers, int curveType = 0)
    {
        int head = curveType > 0 ? 12 : 8;
        byte[] contents = new byte[head + 4 * numbers.Length];
        Encoding.ASCII.GetBytes(type, contents);
        if (curveType > 0) BinaryPrimitives.WriteUInt16BigEndian(contents.AsSpan(8), (ushort)curveType);
        for (int i = 0; i < numbers.Length; i++) BinaryPrimitives.WriteInt32BigEndian(contents.AsSpan(head + 4 * i), Sixteenths(numbers[i]));
        return contents;
    }

    // Text in one language.
    private static byte[] Words(string text)
    {
        byte[] letters = Encoding.BigEndianUnicode.GetBytes(text);
        byte[] contents = new byte[28 + letters.Length];
        Encoding.ASCII.GetBytes("mluc", contents);
        BinaryPrimitives.WriteInt32BigEndian(contents.AsSpan(8), 1);
        BinaryPrimitives.WriteInt32BigEndian(contents.AsSpan(12), 12);
        Encoding.ASCII.GetBytes("enUS", contents.AsSpan(16));
        BinaryPrimitives.WriteInt32BigEndian(contents.AsSpan(20), letters.Length);
        BinaryPrimitives.WriteInt32BigEndian(contents.AsSpan(24), 28);
        letters.CopyTo(contents, 28);
        return contents;
    }

    private static int Sixteenths(double value) => (int)Math.Round(value * 65536);

    private static int Padded(int length) => (length + 3) / 4 * 4;
}
