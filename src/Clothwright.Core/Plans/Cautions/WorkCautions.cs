using System.Collections.Immutable;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Cautions;

/// <summary>Cautions for the weaver herself.</summary>
internal static class WorkCautions
{
    // Wool and cotton hold up to about three times their mass of water from the bath; lifting guidance starts from 23 kg and goes down.
    private static readonly Mass HeavyWhenWet = Mass.FromKilograms(2.5);

    private static readonly WorkTime LongWork = WorkTime.FromHours(3);

    private static readonly Source Strain = Source.Published("survey of 257 handloom weavers, library.aosis.co.za 42844; J. Appl. Nat. Sci. 7(1):102, 2015");

    private static readonly Source Lifting = Source.FromMemoryOf("NIOSH lifting equation, 1991");

    private static readonly Source Scalds = Source.FromMemoryOf("CPSC note on tap water scalds");

    public static IEnumerable<Caution> Of(ImmutableArray<PiecePlan> pieces, ImmutableArray<YarnNeed> yarns, WorkEstimate work)
    {
        if (work.Total.Value > LongWork)
        {
            yield return new Caution("strain", "Change task and stand up often: of 257 handloom weavers 85 % had pain from the work within a year, most in the low back. Weave in short sessions, and stop before it hurts.", Strain);
        }

        if (pieces.Any(p => p.Piece.Fulled))
        {
            yield return new Caution("hot-water", "Fulling wants hot water: about 60 °C harms the skin in seconds. Wear gloves, and fill the bath before you reach in.", Scalds);
        }

        if (yarns.Sum(y => y.InPieces.Value.Kilograms) > HeavyWhenWet.Kilograms)
        {
            yield return new Caution("wet-weight", "Wet, this cloth weighs about three times as much as dry. Drain and press it before lifting, and lift with a second person.", Lifting);
        }
    }
}
