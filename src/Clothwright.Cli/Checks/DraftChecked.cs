using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Workings;

namespace Clothwright.Cli.Checks;

/// <summary>What a check of a draft found.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Ends">Ends per width; null if not told.</param>
/// <param name="Picks">Picks per length; null if not told.</param>
/// <param name="Floats">Floats held against the rule for what the cloth is for; null if that was not told.</param>
internal sealed record DraftChecked(ClothAnalysis Cloth, Derived<Sett>? Ends, Derived<Sett>? Picks, FloatAdvice? Floats)
{
    /// <summary>Shafts with too few heddles.</summary>
    public ImmutableArray<InputProblem> Heddles { get; init; } = [];

    /// <summary>What was not as it should be in the file.</summary>
    public IReadOnlyList<string> FileWarnings { get; init; } = [];

    /// <summary>Everything that is wrong.</summary>
    public IEnumerable<InputProblem> Problems => [.. Cloth.Problems.Where(p => !(FloatingSelvedges && p.Where == "treadling")), .. Heddles];

    /// <summary>Whether floating selvedges hang at both edges: then no turn misses its edge.</summary>
    public bool FloatingSelvedges { get; init; }

    /// <summary>Whether nothing is wrong and no float too long.</summary>
    public bool Passed => !Problems.Any() && Floats is null or { IsFine: true };

    /// <summary>How long a float is; null without sett.</summary>
    public Length? LengthOf(ThreadFloat found) => Ends is null || Picks is null ? null : FloatLength.Of(found, Ends, Picks).Value;
}
