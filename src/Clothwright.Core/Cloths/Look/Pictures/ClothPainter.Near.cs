using System.Numerics;
using System.Runtime.CompilerServices;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Places;

namespace Clothwright.Core.Cloths.Look.Pictures;

public sealed partial class ClothPainter
{
    // Steps of unevenness along a thread, of streaks along and across it and of pile, in millimetres or per half width; by eye.
    private const float SlubStep = 1 / 7f;
    private const float ThinStep = 1 / 2.3f;
    private const float StreakStep = 1 / 1.4f;
    private const float StreaksAcross = 3.5f;
    private const float PileStep = 1 / 0.28f;
    private const float PileEdge = 0.45f;
    private const float GlintStep = 1 / 1.1f;
    internal const float RimShare = 0.35f;

    // What lies behind a gap stands in the shade of the threads around it.
    private const float GapLight = 0.62f;

    // A point where a warp and a weft thread cross: both are reckoned, the upper one covers the lower.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Vector3 Point(in PlaceSample x, in PlaceSample y)
    {
        if (x.Place < 0 || y.Place < 0) return _behind;
        int here = _cells[x.Place, y.Place];
        int along = _cells[x.Place, y.Neighbour];
        int across = _cells[x.Neighbour, y.Place];
        int end = (here >> 1) & 3;
        int pick = (here >> 3) & 3;
        float up = here & 1;
        float warpNext = ((along >> 1) & 3) == end ? along & 1 : 0;
        float weftNext = ((across >> 3) & 3) == pick ? 1 - (across & 1) : 0;
        int endNumber = x.Thread + end;
        int pickNumber = y.Thread + pick;
        Strand warp = Lay(_ends[endNumber], (uint)endNumber * 2, x.Offset, y.Seen, y.Cloth, up, warpNext, y.Rise, y.Slope, _numbers.WarpHeight);
        Strand weft = Lay(_picks[pickNumber], (uint)pickNumber * 2 + 1, y.Offset, x.Seen, x.Cloth, 1 - up, weftNext, x.Rise, x.Slope, _numbers.WeftHeight);
        bool warpAbove = warp.Height > weft.Height;
        (Strand top, Strand below) = warpAbove ? (warp, weft) : (weft, warp);
        Vector3 light = _behind * GapLight;
        if (top.Cover < 1)
        {
            if (below.Cover > 0) light = Vector3.Lerp(light, Shade(below, !warpAbove), below.Cover);
            if (top.Cover <= 0) return light;
        }

        return Vector3.Lerp(light, Shade(top, warpAbove), top.Cover);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Strand Lay(in ClothThread thread, uint seed, float offset, float seen, float cloth, float here, float next, float rise, float slope, float crimp)
    {
        int number = thread.Clasp >= 0 && cloth >= thread.ClaspMillimetres ? thread.Clasp : thread.Look;
        ReadOnlySpan<float> look = Look(number);
        uint mixed = ThreadNoise.Mixed(seed);
        float slub = look[6] > 0 ? ThreadNoise.Along(seen * SlubStep, mixed) + 0.6f * ThreadNoise.Along(seen * ThinStep, mixed ^ 0x9e3779b9u) : 0;
        float wander = look[16] > 0 ? look[16] * ThreadNoise.Along(seen * SlubStep, mixed ^ 0x85ebca6bu) : 0;
        float across = (offset + wander) / (look[3] * 0.5f * (1 + look[6] * slub));
        float fuzz = look[5];
        float away = MathF.Abs(across);
        if (look[11] > 0) away += PileEdge * ThreadNoise.Over(seen * PileStep, across * look[3] * 0.5f * PileStep, mixed ^ 0x27d4eb2fu);
        float cover = fuzz > 0 ? 1 - Smooth(1 - 0.7f * fuzz, 1 + 0.7f * fuzz, away) : away < 1 ? 1 : 0;
        float bulge = MathF.Sqrt(MathF.Max(0, 1 - across * across));
        float height = (here + (next - here) * rise - 0.5f) * crimp + look[4] * 0.5f * bulge;
        return new Strand(number, thread, mixed, across, seen, cloth, (next - here) * slope, height, cover, slub);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Vector3 Shade(in Strand strand, bool warp)
    {
        ReadOnlySpan<float> look = Look(strand.Look);
        Vector3 albedo = Albedo(strand.Look, strand.Thread, strand.Cloth);
        float across = Math.Clamp(strand.Across, -1, 1);
        float slope = strand.Slope;
        if (look[7] > 0) slope = Math.Clamp(slope + look[7] * ThreadNoise.Along(strand.Seen * GlintStep, strand.Seed ^ 0xc2b2ae35u), -1, 1);
        (float body, float gloss, float rim) = _lights[(int)look[15]].At(slope, across);

        float fuzz = look[5];
        float shadow = 0.4f + 0.6f * Smooth(-0.35f, 0.5f, strand.Height / _numbers.Thickness);
        shadow += (1 - shadow) * fuzz * 0.5f;
        if (look[8] != 0)
        {
            float turns = strand.Seen * MathF.Abs(look[8]) + ((look[8] > 0) == warp ? -0.5f : 0.5f) * strand.Across;
            float groove = MathF.Abs(2 * (turns - MathF.Floor(turns)) - 1);
            shadow *= 0.75f + 0.25f * Smooth(0, 0.5f, groove);
        }

        float vary = 1 + 0.5f * look[6] * strand.Slub;
        if (look[11] > 0)
        {
            vary += 0.45f * ThreadNoise.Over(strand.Seen * PileStep, strand.Across * look[3] * 0.5f * PileStep, strand.Seed);
        }
        else if (_streaks > 0 && look[17] > 0)
        {
            float slant = (warp ? -look[18] : look[18]) / (look[3] * 0.5f);
            vary += _streaks * look[17] * ThreadNoise.Over((strand.Across + strand.Seen * slant) * StreaksAcross, strand.Seen * StreakStep, strand.Seed);
        }

        Vector3 tint = Tint(strand.Look);
        return albedo * (vary * shadow * (Lighting.Ambient + Lighting.Key * body) + fuzz * rim * RimShare) + tint * (Lighting.Key * shadow * gloss);
    }

    // The colour of the yarn at this place, adapted to the light.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Vector3 Albedo(int number, in ClothThread thread, float cloth)
    {
        ReadOnlySpan<float> look = Look(number);
        Vector3 colour = look[9] >= 0 ? Stretch((int)look[9], cloth * look[10] * thread.Way + thread.Phase) : new Vector3(look[0], look[1], look[2]);
        return Vector3.Max((colour - Tint(number) * _exposure[number * Exposure.Parts + 1]) * _exposure[number * Exposure.Parts], default);
    }

    private Vector3 Tint(int number)
    {
        ReadOnlySpan<float> exposure = _exposure.AsSpan(number * Exposure.Parts, Exposure.Parts);
        return new Vector3(exposure[2], exposure[3], exposure[4]);
    }

    private Vector3 Stretch(int row, float at)
    {
        int step = Math.Min((int)((at - MathF.Floor(at)) * LookNumbers.StretchSteps), LookNumbers.StretchSteps - 1);
        ReadOnlySpan<float> colour = _numbers.Stretches.AsSpan((row * LookNumbers.StretchSteps + step) * 3, 3);
        return new Vector3(colour[0], colour[1], colour[2]);
    }

    private ReadOnlySpan<float> Look(int number) => _numbers.Looks.AsSpan(number * LookNumbers.PerLook, LookNumbers.PerLook);

    private readonly record struct Strand(
        int Look, ClothThread Thread, uint Seed, float Across, float Seen, float Cloth, float Slope, float Height, float Cover, float Slub);
}
