namespace Clothwright.Core.Cloths.Look;

/// <summary>How a fibre takes and throws back light.</summary>
public sealed record Lustre
{
    /// <summary>What it is called, for example <c>silk, reeled</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Width of the gloss over the half angle, a standard deviation in radians: small is silky.</summary>
    public required double GlossWidthRadians { get; init; }

    /// <summary>Width of the body light, a standard deviation in radians.</summary>
    public required double BodyWidthRadians { get; init; }

    /// <summary>Share of the body light that goes every way alike, 0 to 1.</summary>
    public required double Evenness { get; init; }

    /// <summary>Share of light thrown back straight on: ((n − 1) ÷ (n + 1))² of the refractive index; of metal far more.</summary>
    public required double Reflectance { get; init; }

    /// <summary>Hairs standing off the thread, 0 (none) to 1 (all pile).</summary>
    public double Fuzz { get; init; }

    /// <summary>How uneven its thickness is, as a standard deviation in share of the width.</summary>
    public double Slub { get; init; }

    /// <summary>Share of light that goes into the body at all: 1, of metal a tenth.</summary>
    public double BodyShare { get; init; } = 1;

    /// <summary>Whether the gloss has the thread's own colour, as of metal.</summary>
    public bool IsMetal { get; init; }

    /// <summary>Whether the thread is all pile, without a direction of its own.</summary>
    public bool IsPile { get; init; }

    /// <summary>A fibre by its angles in degrees.</summary>
    internal static Lustre Of(string name, double gloss, double body, double evenness, double reflectance, double fuzz, double slub) => new()
    {
        Name = name,
        GlossWidthRadians = gloss * Math.PI / 180,
        BodyWidthRadians = body * Math.PI / 180,
        Evenness = evenness,
        Reflectance = reflectance,
        Fuzz = fuzz,
        Slub = slub,
    };
}
