namespace Clothwright.Core.Weaves.Pictures;

/// <summary>A picture as levels of grey, row after row, 0 black to 255 white.</summary>
internal sealed class GreyPicture
{
    private readonly byte[] _levels;

    public GreyPicture(int width, int height, byte[] levels)
    {
        Width = width;
        Height = height;
        _levels = levels;
        Darkest = levels.Min();
        Lightest = levels.Max();
    }

    public int Width { get; }

    public int Height { get; }

    public byte Darkest { get; }

    public byte Lightest { get; }

    /// <summary>A step between neighbouring pixels that is more than noise.</summary>
    public int Step => Math.Max(8, (Lightest - Darkest) / 8);

    public byte this[int x, int y] => _levels[y * Width + x];

    /// <summary>The same picture with rows and columns exchanged.</summary>
    public GreyPicture Turned()
    {
        byte[] turned = new byte[_levels.Length];
        for (int y = 0; y < Height; y++)
        {
            for (int x = 0; x < Width; x++) turned[x * Height + y] = _levels[y * Width + x];
        }

        return new GreyPicture(Height, Width, turned);
    }

    /// <summary>How much the picture changes from each column to the next, in steps that are more than noise; entry x is the change between x − 1 and x.</summary>
    public double[] Changes()
    {
        double[] changes = new double[Width + 1];
        for (int y = 0; y < Height; y++)
        {
            ReadOnlySpan<byte> row = _levels.AsSpan(y * Width, Width);
            for (int x = 1; x < row.Length; x++)
            {
                int change = Math.Abs(row[x] - row[x - 1]);
                if (change >= Step) changes[x] += change;
            }
        }

        return changes;
    }
}
