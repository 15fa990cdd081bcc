using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Pieces;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Lengths;

/// <summary>Divides the warp from front to back: what every part of it becomes.</summary>
internal static class WarpSections
{
    private static readonly Rule SampleRule = new("warp in a sample", "warp = length of the sample off tension ÷ (1 − take-up)", Source.Derivation);

    /// <summary>Length of warp to wind.</summary>
    public static Rule LengthRule { get; } = new(
        "warp length", "warp = header + sample + for each piece woven part ÷ (1 − take-up) and fringes + gaps between + loom waste", Source.Derivation);

    /// <summary>The stretches of warp, front first.</summary>
    /// <param name="request">The decisions.</param>
    /// <param name="loom">The loom.</param>
    /// <param name="cloths">The cloth of each piece.</param>
    /// <param name="lengths">The lengths of each piece.</param>
    public static ImmutableArray<WarpSection> Of(PlanRequest request, Loom loom, IReadOnlyList<PieceCloth> cloths, IReadOnlyList<PieceLengths> lengths)
    {
        var sections = ImmutableArray.CreateBuilder<WarpSection>();
        if (request.Header > Length.Zero) sections.Add(new WarpSection(WarpSectionKind.Header, "header", Derived.Decision("header", request.Header), null));
        if (request.Sample > Length.Zero)
        {
            Derived<Length> sample = Derived.From<Length>(
                "warp in the sample", SampleRule, Derived.Decision("sample", request.Sample), cloths[0].WarpTakeUp, (length, t) => length / (1 - t));
            sections.Add(new WarpSection(WarpSectionKind.Sample, "sample", sample, null));
            AddGap(sections, request);
        }

        for (int i = 0; i < request.Pieces.Length; i++)
        {
            Piece piece = request.Pieces[i];
            for (int copy = 0; copy < piece.Count; copy++)
            {
                if (i > 0 || copy > 0) AddGap(sections, request);
                AddPiece(sections, i, NameOf(piece, copy), lengths[i]);
            }
        }

        sections.Add(new WarpSection(WarpSectionKind.LoomWaste, "loom waste", Waste(request, loom), null));
        return sections.ToImmutable();
    }

    private static void AddPiece(ImmutableArray<WarpSection>.Builder sections, int index, string name, PieceLengths lengths)
    {
        if (lengths.OneFringe is { } first) sections.Add(new WarpSection(WarpSectionKind.Fringe, $"{name}, fringe", first, index));
        sections.Add(new WarpSection(WarpSectionKind.Cloth, $"{name}, woven", lengths.WovenWarp, index));
        if (lengths.OneFringe is { } second) sections.Add(new WarpSection(WarpSectionKind.Fringe, $"{name}, fringe", second, index));
    }

    private static void AddGap(ImmutableArray<WarpSection>.Builder sections, PlanRequest request)
    {
        if (request.Gap > Length.Zero) sections.Add(new WarpSection(WarpSectionKind.Gap, "gap", Derived.Decision("gap", request.Gap), null));
    }

    private static Derived<Length> Waste(PlanRequest request, Loom loom) =>
        request.Allowances.LoomWaste is { } measured ? Derived.Given("loom waste", measured, Source.Measured) : loom.Waste;

    private static string NameOf(Piece piece, int copy) =>
        piece.Count == 1 ? piece.Name : $"{piece.Name} {(copy + 1).ToString(CultureInfo.InvariantCulture)}";
}
