using System.Collections.Immutable;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.WeftChoice;

/// <summary>A weft from the shelf for a piece, and what would come of it.</summary>
public sealed record WeftProposal
{
    /// <summary>The yarns: one, or two pick by pick in turn.</summary>
    public required ImmutableArray<Yarn> Yarns { get; init; }

    /// <summary>Order of the picks.</summary>
    public required ImmutableArray<WeftRun> Weft { get; init; }

    /// <summary>The piece as it would be planned.</summary>
    public required PiecePlan Piece { get; init; }

    /// <summary>Colours of both faces from afar.</summary>
    public required FusedColours Colours { get; init; }

    /// <summary>Difference of the face from the wanted colour, CIEDE2000; null where none is wanted.</summary>
    public required double? FaceDifference { get; init; }

    /// <summary>Whether the pattern of the face reads.</summary>
    public required PatternLegibility Legibility { get; init; }

    /// <summary>Largest change of the face's colour as light falls along the warp or along the weft, CIEDE2000.</summary>
    public required Derived<Number> Shimmer { get; init; }

    /// <summary>Diameter of the weft beside that of the present one, as a share: 0 is alike.</summary>
    public required double ThicknessDifference { get; init; }

    /// <summary>Whether the weft's thickness is so far from the present one's that the cloth is another.</summary>
    public bool IsAnotherCloth => ThicknessDifference > WeftChooser.LikeThickness;

    /// <summary>Mass of weft yarn that the shelf lacks, both yarns together.</summary>
    public required Mass Short { get; init; }

    /// <summary>Whether it is what is woven now.</summary>
    public required bool IsPresent { get; init; }

    /// <summary>Why it is proposed, and what speaks against it.</summary>
    public required ImmutableArray<string> Reasons { get; init; }
}
