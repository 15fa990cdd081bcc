using System.Buffers.Binary;
using Clothwright.TestKit.Photographs;

namespace Clothwright.Browser.Tests.Photographs;

/// <summary>A painted photograph as a file that a browser opens: a bitmap, which needs no packing.</summary>
internal static class PaintedPhotograph
{
    private const int Head = 54;

    /// <summary>The file.</summary>
    /// <param name="swatch">What is painted.</param>
    public static byte[] Bmp(SyntheticSwatch swatch)
    {
        byte[] rgba = SwatchPainter.Rgba(swatch);
        int side = swatch.Side;
        int row = (side * 3 + 3) / 4 * 4;
        var file = new byte[Head + row * side];
        (file[0], file[1]) = ((byte)'B', (byte)'M');
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(2), file.Length);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(10), Head);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(14), 40);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(18), side);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(22), side);
        BinaryPrimitives.WriteInt16LittleEndian(file.AsSpan(26), 1);
        BinaryPrimitives.WriteInt16LittleEndian(file.AsSpan(28), 24);
        for (int y = 0; y < side; y++)
        {
            // Bitmaps begin at the bottom.
            Span<byte> line = file.AsSpan(Head + (side - 1 - y) * row);
            for (int x = 0; x < side; x++)
            {
                int from = (y * side + x) * 4;
                (line[x * 3], line[x * 3 + 1], line[x * 3 + 2]) = (rgba[from + 2], rgba[from + 1], rgba[from]);
            }
        }

        return file;
    }
}
