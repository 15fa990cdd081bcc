using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Clothwright.Core.Plans.Ends;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Worksheets;

/// <summary>How the weave was chosen: by name, drawn thread by thread, or from a file.</summary>
public abstract record WeaveDecision
{
    private protected WeaveDecision()
    {
    }

    /// <summary>The weave, one repeat.</summary>
    /// <param name="where">Place to name in a problem.</param>
    public abstract Parsed<Weave> Resolve(string where = "weave");

    /// <summary>A weave by its name and numbers, for example <c>2/2 twill</c>.</summary>
    /// <param name="Name">The name.</param>
    public sealed record Named(string Name) : WeaveDecision
    {
        /// <inheritdoc />
        public override Parsed<Weave> Resolve(string where = "weave")
        {
            Parsed<Weave> weave = WeaveCatalogue.Make(Name);
            return weave.Succeeded ? weave : weave.Problem with { Where = where };
        }
    }

    /// <summary>A draft drawn on the worksheet.</summary>
    /// <param name="Draft">One repeat.</param>
    public sealed record Drawn(Draft Draft) : WeaveDecision
    {
        /// <summary>Which picks are pattern picks.</summary>
        public PatternPicks PatternPicks { get; init; }

        /// <inheritdoc />
        public override Parsed<Weave> Resolve(string where = "weave") => AsDrawn(Draft, PatternPicks, "as drawn on the worksheet", where);
    }

    /// <summary>A draft kept in a file beside the worksheet.</summary>
    /// <param name="Path">The file's path as written on the worksheet.</param>
    /// <param name="Draft">What the file held when the worksheet was read.</param>
    public sealed record FromFile(string Path, Draft Draft) : WeaveDecision
    {
        /// <summary>Which picks are pattern picks.</summary>
        public PatternPicks PatternPicks { get; init; }

        /// <inheritdoc />
        public override Parsed<Weave> Resolve(string where = "weave") => AsDrawn(Draft, PatternPicks, $"as drawn in {Path}", where);
    }

    private static Parsed<Weave> AsDrawn(Draft draft, PatternPicks patternPicks, string formula, string where)
    {
        Parsed<Draft> sound = DraftCheck.Checked(draft);
        if (!sound.Succeeded) return sound.Problem.Under(where);
        return new Weave
        {
            Name = draft.Name.Length > 0 ? draft.Name : "own draft",
            Draft = draft,
            Rule = new Rule("own draft", formula, Source.Decision),
            RepeatEnds = draft.Ends,
            RepeatPicks = draft.Picks,
            BalancingEnds = ThreadingMirror.BalancingEnds(draft.Threading),
            EndRoles = Ground(draft.Ends),
            PickRoles = patternPicks == PatternPicks.None ? Ground(draft.Picks) : [.. Enumerable.Range(1, draft.Picks).Select(p => RoleOf(p, patternPicks))],
        };
    }

    // A new array holds the first of the roles.
    private static ImmutableArray<ThreadRole> Ground(int threads) => ImmutableCollectionsMarshal.AsImmutableArray(new ThreadRole[threads]);

    private static ThreadRole RoleOf(int pick, PatternPicks patternPicks) => (patternPicks, pick % 2) switch
    {
        (PatternPicks.Odd, 1) or (PatternPicks.Even, 0) => ThreadRole.Pattern,
        _ => ThreadRole.Ground,
    };
}
