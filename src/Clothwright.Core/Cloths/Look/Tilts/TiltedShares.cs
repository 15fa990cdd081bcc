namespace Clothwright.Core.Cloths.Look.Tilts;

/// <summary>What is seen of a cloth by an eye that does not stand straight above: shares of warp, weft and gap.</summary>
/// <param name="WarpShare">Share of what is seen that is warp, 0 to 1.</param>
/// <param name="WeftShare">Share that is weft.</param>
public readonly record struct TiltedShares(double WarpShare, double WeftShare)
{
    // Sight lines each way over the piece looked at, and steps down each of them.
    private const int Lines = 48;
    private const int Steps = 64;

    /// <summary>Most crossings each way that are looked at.</summary>
    public const int MostCrossings = 16;

    /// <summary>Follows sight lines down through the threads of a few crossings.</summary>
    /// <remarks>
    /// The threads are those that are painted: waves of half a cosine over each crossing, their sections race-tracks cut square to them. Every
    /// sight line is followed in equal steps of height until it is inside one of them.
    /// </remarks>
    /// <param name="section">The threads.</param>
    /// <param name="columns">Crossings across after which the weave repeats.</param>
    /// <param name="rows">Crossings along after which it repeats.</param>
    /// <param name="warpUp">1 where the warp is on top, else 0; by column and row within the repeat.</param>
    /// <param name="acrossSlope">How far the eye leans to the right for each unit of height: x ÷ z of the direction to it.</param>
    /// <param name="alongSlope">How far it leans along the warp: y ÷ z.</param>
    public static TiltedShares Of(in TiltedSection section, int columns, int rows, Func<int, int, int> warpUp, double acrossSlope, double alongSlope)
    {
        ArgumentNullException.ThrowIfNull(warpUp);
        int wide = Math.Min(columns, MostCrossings);
        int high = Math.Min(rows, MostCrossings);
        double top = section.Top;
        double stride = 2 * top / Steps;
        (int warp, int weft) = (0, 0);
        for (int j = 0; j < Lines; j++)
        {
            for (int i = 0; i < Lines; i++)
            {
                double x = (i + 0.5) / Lines * wide;
                double y = (j + 0.5) / Lines * high;
                for (int k = 0; k < Steps; k++)
                {
                    double down = (k + 0.5) * stride;
                    int hit = section.At(x - down * acrossSlope / section.EndPitch, y - down * alongSlope / section.PickPitch, top - down, columns, rows, warpUp);
                    if (hit == 0) continue;
                    if (hit == 1) warp++;
                    else weft++;
                    break;
                }
            }
        }

        return new TiltedShares((double)warp / (Lines * Lines), (double)weft / (Lines * Lines));
    }
}
