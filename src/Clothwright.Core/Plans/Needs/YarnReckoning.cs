using System.Collections.Immutable;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Needs;

/// <summary>Adds up what the whole warp takes of one yarn.</summary>
internal sealed class YarnReckoning
{
    private static readonly Rule WarpRule = new("yarn for the warp", "length = ends × warp length", Source.Derivation);

    private static readonly Rule WeftRule = new("yarn for the weft", "sum over pieces and sample of count × (weft in the cloth + joins and tails)", Source.Derivation);

    private static readonly Rule TotalRule = new("yarn", "warp + weft", Source.Derivation);

    private static readonly Rule MassRule = new("mass of yarn", "mass = length × mass per length", Source.Definition);

    private static readonly Rule PiecesRule = new("yarn in the pieces", "mass = (ends × warp of one end in pieces + weft in the pieces) × mass per length", Source.Derivation);

    private static readonly Rule WasteRule = new("yarn wasted", "mass = (ends × warp of one end not in pieces + weft in sample, joins and tails) × mass per length", Source.Derivation);

    private static readonly Rule CostRule = new("price of the yarn used", "price = mass × price of a package ÷ mass in a package", Source.Derivation);

    private readonly ImmutableArray<WarpSection> _sections;
    private readonly ImmutableArray<PiecePlan> _pieces;
    private readonly ImmutableArray<WeftNeed> _sample;
    private readonly Derived<Length> _warpLength;

    /// <summary>Everything that yarns are wanted for.</summary>
    /// <param name="sections">The warp from front to back.</param>
    /// <param name="warpLength">Length of the warp.</param>
    /// <param name="pieces">The pieces.</param>
    /// <param name="sample">Weft of the sample.</param>
    public YarnReckoning(ImmutableArray<WarpSection> sections, Derived<Length> warpLength, ImmutableArray<PiecePlan> pieces, ImmutableArray<WeftNeed> sample)
    {
        _sections = sections;
        _warpLength = warpLength;
        _pieces = pieces;
        _sample = sample;
    }

    /// <summary>What is taken of a yarn.</summary>
    /// <param name="yarn">The yarn.</param>
    /// <param name="ends">Ends of it in the warp.</param>
    /// <param name="endsInPiece">Ends of it woven in each piece.</param>
    public YarnNeed For(Yarn yarn, int ends, IReadOnlyList<int> endsInPiece)
    {
        Derived<Whole> count = Derived.Decision($"{yarn.Id}, ends", Whole.FromCount(ends));
        Derived<Length> warp = Derived.From<Length>($"{yarn.Id}, warp", WarpRule, count, _warpLength, (n, length) => n * length);
        Derived<Length> kept = ends == 0 ? Derived.Decision("warp of one end in pieces", Length.Zero) : WarpUse.Kept(_sections, _pieces, endsInPiece, ends);
        (Derived<Length> weftInPieces, Derived<Length> weftWaste) = Weft(yarn);
        Derived<Length> weft = Derived.Sum($"{yarn.Id}, weft", WeftRule, [weftInPieces, weftWaste]);
        Derived<Length> total = Derived.Sum($"{yarn.Id}, length", TotalRule, [warp, weft]);
        Derived<Mass> mass = Derived.From<Mass>($"{yarn.Id}, mass", MassRule, total, yarn.LinearDensity, (metres, tex) => metres * tex / 1e6);
        return new YarnNeed
        {
            Yarn = yarn,
            Ends = count,
            Warp = warp,
            Weft = weft,
            Total = total,
            Mass = mass,
            InPieces = Derived.From<Mass>(
                $"{yarn.Id}, in the pieces", PiecesRule, [count, kept, weftInPieces, yarn.LinearDensity], v => (v[0] * v[1] + v[2]) * v[3] / 1e6),
            Waste = Derived.From<Mass>(
                $"{yarn.Id}, wasted",
                WasteRule,
                [count, _warpLength, kept, weftWaste, yarn.LinearDensity],
                v => Math.Max(0, (v[0] * (v[1] - v[2]) + v[3]) * v[4] / 1e6)),
            Packages = PackageReckoning.Choose(mass, StockReckoning.OnShelf(yarn), yarn.Offer),
            Cost = Cost(yarn, mass),
        };
    }

    /// <summary>Whether a yarn lies in any weft.</summary>
    public bool IsWeft(string yarnId) => _pieces.SelectMany(p => p.Weft).Concat(_sample).Any(w => w.YarnId == yarnId);

    private (Derived<Length> InPieces, Derived<Length> Waste) Weft(Yarn yarn)
    {
        var kept = new List<IDerived>();
        var keptTimes = new List<int>();
        var lost = new List<IDerived>();
        var lostTimes = new List<int>();
        foreach (PiecePlan piece in _pieces)
        {
            foreach (WeftNeed need in piece.Weft.Where(w => w.YarnId == yarn.Id))
            {
                kept.Add(need.InCloth);
                keptTimes.Add(piece.Piece.Count);
                lost.Add(need.Waste);
                lostTimes.Add(piece.Piece.Count);
            }
        }

        foreach (WeftNeed need in _sample.Where(w => w.YarnId == yarn.Id))
        {
            lost.AddRange([need.InCloth, need.Waste]);
            lostTimes.AddRange([1, 1]);
        }

        return (Times($"{yarn.Id}, weft in the pieces", kept, keptTimes), Times($"{yarn.Id}, weft wasted", lost, lostTimes));
    }

    private static Derived<Length> Times(string label, List<IDerived> lengths, List<int> times) => lengths.Count == 0
        ? Derived.Decision(label, Length.Zero)
        : Derived.From<Length>(label, WeftRule, lengths, v =>
        {
            double sum = 0;
            for (int i = 0; i < v.Length; i++) sum += v[i] * times[i];
            return sum;
        });

    private static Derived<Money>? Cost(Yarn yarn, Derived<Mass> mass) => yarn.Offer is not { } offer
        ? null
        : Derived.From<Money>(
            $"{yarn.Id}, price",
            CostRule,
            mass,
            Derived.Decision("price of a package", offer.Price),
            Derived.Decision("mass in a package", offer.NetMass),
            (kilograms, price, net) => kilograms * price / net);
}
