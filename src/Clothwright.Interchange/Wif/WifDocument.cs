using System.Collections.Immutable;
using Clothwright.Core.Weaves;

namespace Clothwright.Interchange.Wif;

/// <summary>Everything a file of the open interchange standard WIF 1.1 (1997) holds.</summary>
/// <remarks>
/// Standard sections are typed; sections private to one writer, pictures, and sections the standard does not know are kept word
/// for word. Threads, shafts, treadles and colours are numbered from 1. Sparse as in the file: a thread that is not listed takes
/// the default of its system; an end, pick or treadle that is not listed is on no shaft, presses nothing, moves nothing.
/// </remarks>
public sealed record WifDocument
{
    /// <summary>Who wrote the file.</summary>
    public WifSource Source { get; init; } = new();

    /// <summary>The colours; null if the file has none.</summary>
    public WifPalette? Palette { get; init; }

    /// <summary>Title and author.</summary>
    public WifText Text { get; init; } = new();

    /// <summary>Notes, line by line.</summary>
    public WifNumbered<string> Notes { get; init; } = WifNumbered.None<string>();

    /// <summary>Shafts, 0 to 64; 0 if none are used.</summary>
    public int Shafts { get; init; }

    /// <summary>Treadles, 0 to 64.</summary>
    public int Treadles { get; init; }

    /// <summary>True: listed shafts rise. False: they sink.</summary>
    public bool RisingShed { get; init; } = true;

    /// <summary>The warp.</summary>
    public WifThreads Warp { get; init; } = new();

    /// <summary>The weft.</summary>
    public WifThreads Weft { get; init; } = new();

    /// <summary>Shafts each treadle moves; null if the file has no such section.</summary>
    public WifNumbered<ShaftSet>? TieUp { get; init; }

    /// <summary>Shafts each end is on; null if the file has no such section.</summary>
    public WifNumbered<ShaftSet>? Threading { get; init; }

    /// <summary>Treadles each pick presses; null if the file has no such section.</summary>
    public WifNumbered<ShaftSet>? Treadling { get; init; }

    /// <summary>Shafts each pick moves; null if the file has no such section. Where both plans stand, this one is used.</summary>
    public WifNumbered<ShaftSet>? LiftPlan { get; init; }

    /// <summary>Sections kept word for word: pictures, private sections, sections the standard does not know.</summary>
    public ImmutableArray<WifSection> KeptSections { get; init; } = [];

    /// <summary>Keys the standard does not know, in sections it does.</summary>
    public ImmutableArray<WifExtraKey> ExtraKeys { get; init; } = [];
}
