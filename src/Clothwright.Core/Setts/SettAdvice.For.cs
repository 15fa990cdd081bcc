using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts;

public sealed partial record SettAdvice
{
    /// <summary>Advises on a sett.</summary>
    /// <param name="question">Yarns, weave, purpose, reeds.</param>
    /// <exception cref="InputProblemException">The question cannot be answered: no yarn, or a weave that does not interlace.</exception>
    public static SettAdvice For(SettQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        if (question.Problem() is { } problem) throw new InputProblemException(problem);
        question = LayerSplit.Of(question);
        WeaveCounts counts = WeaveCounts.Of(question.Weave);
        if (counts.WarpTransitions == 0 || counts.WeftTransitions == 0)
        {
            throw new InputProblemException(new InputProblem(
                "Warp and weft do not interlace anywhere, so no sett follows.", "weave", "Use a weave in which ends and picks change face, for example plain."));
        }

        Derived<Length> warp = question.Warp.MeanDiameter();
        Derived<Length> weft = question.Weft.MeanDiameter();
        ImmutableArray<SettLimit> limits = SettLimits.Of(question, counts);
        PurposeSetts setts = PurposeSetts.For(question, counts, limits[0], warp, weft);
        var lines = TightLines.Of(question, counts, warp, weft);
        Derived<Sett> onLoom = question.Layers == 1 ? setts.Ends : Derived.From<Sett>(
            "sett on the loom",
            new Rule("layers", $"sett of one layer × {question.Layers}", Source.Derivation),
            setts.Ends,
            n => n * question.Layers);

        var advice = new SettAdvice
        {
            Question = question,
            Counts = counts,
            WarpDiameter = warp,
            WeftDiameter = weft,
            WarpDiameters = YarnDiameter.Readings(question.Warp.YarnOf(0)),
            WarpWrapsByHand = WrapsDiameter.ByHand(warp),
            WarpTouching = new DiameterReading(warp.Working.Rule.Name, warp).Wraps,
            Limits = limits,
            TightestPick = lines.Pick,
            TightestEnd = lines.End,
            Ends = setts.Ends,
            EndsRange = setts.EndsRange,
            Picks = setts.Picks,
            PicksRange = setts.PicksRange,
            EndsOnLoom = onLoom,
            Reeds = ReedFitting.Fits(onLoom.Value, question.Reeds, question.Heddles, question.HeddlesAtOnce),
            Notes = [],
        };
        return advice with { Notes = SettNotes.On(advice) };
    }
}
