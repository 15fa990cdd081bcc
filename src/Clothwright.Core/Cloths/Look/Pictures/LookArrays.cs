using System.Collections.Immutable;
using Clothwright.Core.Cloths.Look.Light;

namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>The numbers of a look as the page's script takes them.</summary>
/// <param name="Looks">As <see cref="LookNumbers.Looks"/>.</param>
/// <param name="Lustres">Gloss width, body width (radians), evenness, reflectance, fuzz, body share, pile 0 or 1, nothing.</param>
/// <param name="Lights">0 for warp or 1 for weft, number of the lustre, slant of the fibres (radians).</param>
/// <param name="Stretches">As <see cref="LookNumbers.Stretches"/>.</param>
/// <param name="Ends">Look, look after the clasp or −1, place of the clasp in mm, of each end of a round.</param>
/// <param name="Picks">The same of the picks.</param>
/// <param name="SharedEnds">1 where an end shares the place of the one before it.</param>
/// <param name="SharedPicks">The same of the picks.</param>
/// <param name="Measures">Ends and picks per cm, width, length, crimp height of warp and weft and both, in mm; tangents of the steepest rise of warp and weft.</param>
public sealed record LookArrays(
    double[] Looks, double[] Lustres, double[] Lights, double[] Stretches, double[] Ends, double[] Picks, byte[] SharedEnds, byte[] SharedPicks, double[] Measures)
{
    // A cloth of any size is shown this large.
    private const double AnyWidth = 500;
    private const double AnyLength = 2000;

    /// <summary>The arrays.</summary>
    /// <param name="numbers">The numbers.</param>
    public static LookArrays Of(LookNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        LookDescription look = numbers.Description;
        return new LookArrays(
            [.. numbers.Looks],
            [.. numbers.Lustres.SelectMany(Lustre)],
            [.. numbers.Lights.SelectMany(l => (double[])[l.Direction == ThreadDirection.Warp ? 0 : 1, l.Lustre, l.TwistRadians])],
            [.. numbers.Stretches],
            Round(numbers.Ends),
            Round(numbers.Picks),
            Shared(look.SharedEnds),
            Shared(look.SharedPicks),
            [
                look.EndSett.PerCentimetre, look.PickSett.PerCentimetre, look.Width?.Millimetres ?? AnyWidth, look.Length?.Millimetres ?? AnyLength,
                numbers.WarpHeight, numbers.WeftHeight, numbers.Thickness, numbers.WarpSteepest, numbers.WeftSteepest,
            ]);
    }

    private static double[] Lustre(Lustre lustre) =>
        [lustre.GlossWidthRadians, lustre.BodyWidthRadians, lustre.Evenness, lustre.Reflectance, lustre.Fuzz, lustre.BodyShare, lustre.IsPile ? 1 : 0, 0];

    private static double[] Round(ThreadRound round)
    {
        var numbers = new double[round.Looks.Length * 3];
        for (int i = 0; i < round.Looks.Length; i++)
        {
            numbers[3 * i] = round.Looks[i];
            numbers[3 * i + 1] = round.Clasps[i];
            numbers[3 * i + 2] = round.ClaspMillimetres[i];
        }

        return numbers;
    }

    private static byte[] Shared(ImmutableArray<bool> shared) => shared.IsDefaultOrEmpty ? [] : [.. shared.Select(s => (byte)(s ? 1 : 0))];
}
