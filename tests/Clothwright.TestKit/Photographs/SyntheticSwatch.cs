using System.Collections.Immutable;

namespace Clothwright.TestKit.Photographs;

/// <summary>A swatch and the way it is photographed: all that the painter needs, and what a count should find.</summary>
public sealed record SyntheticSwatch
{
    /// <summary>What it is, for a list of results.</summary>
    public required string Name { get; init; }

    /// <summary>Ends in one centimetre of the cloth's plane.</summary>
    public required double EndsPerCentimetre { get; init; }

    /// <summary>Picks in one centimetre of the cloth's plane.</summary>
    public required double PicksPerCentimetre { get; init; }

    /// <summary>The weave's repeat, one text for a pick from the first up, <c>1</c> where warp is on top.</summary>
    public ImmutableArray<string> Weave { get; init; } = ["10", "01"];

    /// <summary>Colours of the ends in turn: linear red, green, blue.</summary>
    public ImmutableArray<(double Red, double Green, double Blue)> WarpColours { get; init; } = [(0.55, 0.5, 0.4)];

    /// <summary>Colours of the picks in turn: linear red, green, blue.</summary>
    public ImmutableArray<(double Red, double Green, double Blue)> WeftColours { get; init; } = [(0.55, 0.5, 0.4)];

    /// <summary>Width of an end as a share of its spacing.</summary>
    public double WarpCover { get; init; } = 0.85;

    /// <summary>Width of a pick as a share of its spacing.</summary>
    public double WeftCover { get; init; } = 0.85;

    /// <summary>Standard deviation of each thread's place, as a share of the spacing.</summary>
    public double Jitter { get; init; }

    /// <summary>Loose hairs for each crossing of an end and a pick.</summary>
    public double Hairs { get; init; }

    /// <summary>Ply turns in one spacing along the thread; 0 for a smooth thread.</summary>
    public double PlyTurns { get; init; } = 0.8;

    /// <summary>How much the cloth is turned in the picture, degrees, anticlockwise.</summary>
    public double TurnDegrees { get; init; }

    /// <summary>How far picks stand off a right angle to the ends, degrees.</summary>
    public double SkewDegrees { get; init; }

    /// <summary>How much the camera looks at a slant, degrees.</summary>
    public double TiltDegrees { get; init; }

    /// <summary>Direction of that slant, degrees.</summary>
    public double TiltTowardsDegrees { get; init; }

    /// <summary>How far away the camera was, millimetres.</summary>
    public double DistanceMillimetres { get; init; } = 300;

    /// <summary>Pixels for a millimetre of the cloth at the middle of the picture.</summary>
    public required double PixelsPerMillimetre { get; init; }

    /// <summary>Width and height of the picture in pixels.</summary>
    public int Side { get; init; } = 800;

    /// <summary>Standard deviation of the blur, pixels.</summary>
    public double Blur { get; init; }

    /// <summary>Standard deviation of the noise in the light, 1 is white.</summary>
    public double Noise { get; init; }

    /// <summary>How much light falls off from one side of the picture to the other, 0 to 1.</summary>
    public double UnevenLight { get; init; }

    /// <summary>Where the light comes from, degrees around the picture.</summary>
    public double LightFromDegrees { get; init; } = 120;

    /// <summary>Where the chance of this swatch starts.</summary>
    public ulong Seed { get; init; }
}
