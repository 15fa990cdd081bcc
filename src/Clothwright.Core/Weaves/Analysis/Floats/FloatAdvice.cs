using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Which floats are too long for what the cloth is for.</summary>
/// <param name="Rule">The rule for the purpose.</param>
/// <param name="Warnings">One warning for each kind of float that is too long, in the order warp face, warp back, weft face, weft back.</param>
public sealed record FloatAdvice(FloatRule Rule, ImmutableArray<FloatWarning> Warnings)
{
    /// <summary>Whether no float is too long.</summary>
    public bool IsFine => Warnings.IsEmpty;

    /// <summary>What to heed where long floats can hurt someone; empty otherwise.</summary>
    public string Caution => IsFine ? "" : Rule.Caution;

    /// <summary>Measures the floats of a cloth against the rule for its purpose.</summary>
    /// <param name="floats">The floats of one repeat, or of the piece.</param>
    /// <param name="purpose">What the cloth is for.</param>
    /// <param name="ends">Ends per unit of width in the cloth.</param>
    /// <param name="picks">Picks per unit of length in the cloth.</param>
    public static FloatAdvice For(ClothFloats floats, FloatPurpose purpose, Derived<Sett> ends, Derived<Sett> picks)
    {
        ArgumentNullException.ThrowIfNull(floats);
        ArgumentNullException.ThrowIfNull(ends);
        ArgumentNullException.ThrowIfNull(picks);
        FloatRule rule = FloatRules.For(purpose);
        var warnings = ImmutableArray.CreateBuilder<FloatWarning>();
        foreach (FloatTally tally in floats.All)
        {
            if (tally.Longest is not { } longest) continue;
            Length spacing = (longest.IsWarp ? picks : ends).Value.Spacing;
            long times = tally.EndlessThreads + tally.Counts.Where(c => spacing * c.Length > rule.Longest).Sum(c => c.Times);
            if (times == 0) continue;
            Derived<Length> length = FloatLength.Of(longest, ends, picks);
            string measure = longest.Endless ? "without end" : $"{length.Value} long";
            string others = times == 1 ? "" : $"; {times} of this kind are too long";
            string limit = QuantityText.Format(QuantityKind.Length, rule.Longest.Metres, UnitStyle.Metric);
            warnings.Add(new FloatWarning(longest, length, times, $"The float of {longest} is {measure}: above {limit} {rule.Reason}{others}."));
        }

        return new FloatAdvice(rule, warnings.ToImmutable());
    }
}
