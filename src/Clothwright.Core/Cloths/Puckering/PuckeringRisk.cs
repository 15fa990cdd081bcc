using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Puckering;

/// <summary>Unlike contraction of the threads of one system: stripes of plain beside satin, or of wool beside cotton.</summary>
/// <remarks>
/// Each thread contracts by the bends its own weave makes and by the washing of its own fibre. Neighbours hold each other, so that the longer
/// thread has to go somewhere: a zone wider than a few threads lifts from the cloth.
/// </remarks>
public sealed record PuckeringRisk
{
    /// <summary>Contraction of the zone that draws in most: share of the thread's length that is lost in bends and in washing.</summary>
    public required Derived<Ratio> Most { get; init; }

    /// <summary>Contraction of the zone that draws in least.</summary>
    public required Derived<Ratio> Least { get; init; }

    /// <summary>Length that the zone drawing in least has over, as a share of the cloth.</summary>
    public required Derived<Ratio> Excess { get; init; }

    /// <summary>Width of the widest zone that has length over; zero where there is none.</summary>
    public required Derived<Length> ZoneWidth { get; init; }

    /// <summary>Height to which such a zone lifts if it can.</summary>
    public required Derived<Length> Lift { get; init; }

    /// <summary>Threads of the zone that draws in most, 0-based, in one repeat.</summary>
    public required ImmutableArray<int> Tightest { get; init; }

    /// <summary>Threads of the zone that draws in least, 0-based, in one repeat.</summary>
    public required ImmutableArray<int> Slackest { get; init; }

    /// <summary>The figure in one word.</summary>
    public PuckerGrade Grade => ZoneWidth.Value.Metres == 0 ? PuckerGrade.Flat : Excess.Value.Percent switch
    {
        < 1 => PuckerGrade.Flat,
        < 2.5 => PuckerGrade.Ripple,
        < 6 => PuckerGrade.Puckers,
        _ => PuckerGrade.Folds,
    };
}
