using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Yarns folded or wound together into one thread.</summary>
public static class FoldedYarn
{
    private static readonly Rule Adding = new(
        "unequal yarns folded",
        "tex of the thread = sum of the tex of its strands; in length-per-mass counts 1/N = sum of 1/n",
        Source.Published("J. T. Taylor, Cotton Weaving and Designing, 6th ed., folded yarns"));

    private static readonly Rule Longer = new(
        "a longer strand",
        "tex in the thread = tex × length of the strand per length of the thread",
        Source.FromMemoryOf("textile calculation texts, fancy yarns"));

    private static readonly Rule Contraction = new(
        "take-up in folding",
        "tex folded = tex / (1 − take-up)",
        Source.Derivation);

    /// <summary>Mass per length of several strands together, for example a doubled weft.</summary>
    /// <param name="label">What the thread is called.</param>
    /// <param name="strands">The strands; at least one.</param>
    /// <exception cref="ArgumentException">No strand.</exception>
    public static Derived<LinearDensity> Together(string label, params IReadOnlyList<Derived<LinearDensity>> strands) => strands.Count > 0
        ? Derived.Sum(label, Adding, strands)
        : throw new ArgumentException("A thread has at least one strand.", nameof(strands));

    /// <summary>A strand that is longer than the thread it is in, as the loop of a bouclé.</summary>
    /// <param name="strand">The strand by itself.</param>
    /// <param name="lengthPerLength">Length of the strand in one length of the thread, 1 or more.</param>
    public static Derived<LinearDensity> LongerStrand(Derived<LinearDensity> strand, Derived<Ratio> lengthPerLength) =>
        Derived.From<LinearDensity>(strand.Working.Label, Longer, strand, lengthPerLength, (tex, k) => tex * k);

    /// <summary>A thread that got shorter, and so heavier per length, in folding.</summary>
    /// <param name="thread">The strands side by side.</param>
    /// <param name="takeUp">Share of the length lost; below 1.</param>
    public static Derived<LinearDensity> Contracted(Derived<LinearDensity> thread, Derived<Ratio> takeUp) =>
        Derived.From<LinearDensity>(thread.Working.Label, Contraction, thread, takeUp, (tex, c) => tex / (1 - c));
}
