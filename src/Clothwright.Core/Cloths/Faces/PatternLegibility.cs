using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Faces;

/// <summary>Whether the pattern of a face is seen: how far its two parts differ, for the size at which they are seen.</summary>
/// <remarks>
/// The crossings of a face fall into two parts, a darker and a lighter one, so that the parts are told apart best; in a cloth of one warp and one
/// weft colour these are the crossings with the warp and with the weft on top. A part's colour is the light of its crossings, the thread beneath
/// included: an open cloth shows less of its pattern than a close one.
/// </remarks>
public sealed record PatternLegibility
{
    /// <summary>The distance from which patterns are judged unless another is said: the arm's length of who wears or holds the piece.</summary>
    public static readonly Length ArmsLength = Length.FromCentimetres(60);

    private static readonly Source Stone = Source.Published("Stone, Szafir and Setlur, An engineering model for color difference as a function of size, 2014");

    /// <summary>Light of the darker part.</summary>
    public required LinearColour Darker { get; init; }

    /// <summary>Light of the lighter part.</summary>
    public required LinearColour Lighter { get; init; }

    /// <summary>Share of the face that is the lighter part.</summary>
    public required double LighterShare { get; init; }

    /// <summary>Width of the figures: the mean run of one part, across or along, whichever is narrower.</summary>
    public required Derived<Length> FigureWidth { get; init; }

    /// <summary>Distance of the eye.</summary>
    public required Derived<Length> Distance { get; init; }

    /// <summary>Noticed differences between the parts: 1 is what half of all people just tell apart at this size.</summary>
    public required Derived<Number> NoticedDifferences { get; init; }

    /// <summary>Difference of lightness, CIELAB L*, 0 to 100. Under 5 the pattern reads by hue alone and goes in dim light; from 15 it reads anywhere.</summary>
    public double LightnessDifference => Math.Abs(CieLab.From(Lighter).L - CieLab.From(Darker).L);

    /// <summary>The figure in one word.</summary>
    public LegibilityGrade Grade => NoticedDifferences.Value.Value switch
    {
        < 1 => LegibilityGrade.Lost,
        < 2 => LegibilityGrade.Subtle,
        < 4 => LegibilityGrade.Readable,
        _ => LegibilityGrade.Bold,
    };

    /// <summary>What is to be expected, as a sentence.</summary>
    public string Words
    {
        get
        {
            string seen = Grade switch
            {
                LegibilityGrade.Lost => "The pattern is lost",
                LegibilityGrade.Subtle => "The pattern is subtle",
                LegibilityGrade.Readable => "The pattern reads",
                _ => "The pattern is bold",
            };
            string light = LightnessDifference switch
            {
                < 5 when Grade > LegibilityGrade.Lost => ", by its hues alone: it goes in dim light",
                >= 15 when Grade > LegibilityGrade.Subtle => ", in any light",
                _ => "",
            };
            return $"{seen}{light}.";
        }
    }

    /// <summary>Judges a face.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="front">Whether the side towards the weaver is looked at.</param>
    /// <param name="distance">Distance of the eye.</param>
    /// <param name="vision">Kind of colour vision in which cones are missing; null for the usual one.</param>
    public static PatternLegibility Of(ClothGeometry cloth, bool front, Length distance, ColourVision? vision = null)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        FaceParts parts = FaceParts.Of(cloth, front, (one, other, figure) => Told(Seen(one, vision), Seen(other, vision), figure, distance.Metres));
        Derived<Length> width = Derived.From<Length>(
            "width of the figures",
            new Rule("width of the figures", $"the smaller of {parts.MeanRunAcross:0.##} ends and {parts.MeanRunAlong:0.##} picks", Source.Derivation),
            cloth.Question.Ends,
            cloth.Question.Picks,
            (ends, picks) => Math.Min(parts.MeanRunAcross / ends, parts.MeanRunAlong / picks));
        Derived<Length> eye = Derived.Decision("distance of the eye", distance);
        CieLab darker = Seen(parts.Darker, vision);
        CieLab lighter = Seen(parts.Lighter, vision);
        return new PatternLegibility
        {
            Darker = parts.Darker,
            Lighter = parts.Lighter,
            LighterShare = parts.LighterShare,
            FigureWidth = width,
            Distance = eye,
            NoticedDifferences = Derived.From<Number>(
                "noticed differences",
                new Rule(
                    "noticed differences",
                    $"√((ΔL ÷ NDL)² + (Δa ÷ NDa)² + (Δb ÷ NDb)²), ND = ½ (A + B ÷ visual angle); ΔL {lighter.L - darker.L:0.0}, Δa {lighter.A - darker.A:0.0}, Δb {lighter.B - darker.B:0.0}",
                    Stone),
                width,
                eye,
                (figure, from) => Told(darker, lighter, figure, from)),
        };
    }

    private static double Told(CieLab one, CieLab other, double figureMetres, double distanceMetres) =>
        NoticedDifference.Of(VisualAngle.Degrees(figureMetres, distanceMetres)).Between(one, other);

    private static CieLab Seen(LinearColour light, ColourVision? vision) => vision is { } kind
        ? CieLab.From(ColourVisionSimulation.Seen(light.ToSrgb(), kind, 1))
        : CieLab.From(light);
}
