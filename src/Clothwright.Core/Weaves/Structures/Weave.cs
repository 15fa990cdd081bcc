using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>A weave made by rule: its draft, and what a weaver has to know about it.</summary>
/// <remarks>A generator gives one repeat; <see cref="Sized(WeaveSize)"/> carries it across a warp.</remarks>
public sealed partial record Weave
{
    /// <summary>Trade name with its figures, for example <c>2/2 twill</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Threading, tie-up and treadling, rising shed.</summary>
    public required Draft Draft { get; init; }

    /// <summary>The rule by which the draft was made, and where it comes from.</summary>
    public required Rule Rule { get; init; }

    /// <summary>Ends after which the threading begins again.</summary>
    public required int RepeatEnds { get; init; }

    /// <summary>Picks after which the treadling begins again.</summary>
    public required int RepeatPicks { get; init; }

    /// <summary>Ends to add after the last repeat so that both edges mirror each other; 0 if there is nothing to balance.</summary>
    public int BalancingEnds { get; init; }

    /// <summary>Picks to add after the last repeat so that start and finish mirror each other; 0 if there is nothing to balance.</summary>
    public int BalancingPicks { get; init; }

    /// <summary>What each end does, one an end.</summary>
    public required ImmutableArray<ThreadRole> EndRoles { get; init; }

    /// <summary>What each pick does, one a pick; pattern picks are a second weft between the ground (tabby) picks.</summary>
    public required ImmutableArray<ThreadRole> PickRoles { get; init; }

    /// <summary>What the yarns of the draft's warp and weft orders are called, by number; empty where any colours will do.</summary>
    /// <remarks>Where it is not empty the weave lives by <see cref="Draft.WarpOrder"/> and <see cref="Draft.WeftOrder"/>.</remarks>
    public ImmutableArray<string> YarnNames { get; init; } = [];

    /// <summary>Cloths that lie one above the other; 1 for a single cloth.</summary>
    public int Layers { get; init; } = 1;

    /// <summary>The side from which the first pick has to be thrown; null where it does not matter.</summary>
    public ClothSide? FirstPickFrom { get; init; }

    /// <summary>The plan of colour areas of clasped yarns, at the size of the draft; null for other weaves, or where no size was asked for.</summary>
    public ColourAreas? Areas { get; init; }

    /// <summary>Size at which the figure can be seen, where a repeat does not show it; null where it does.</summary>
    public WeaveSize? Pictured { get; init; }

    /// <summary>What to look out for: incidental ends, missing tabby, long floats, balance.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Whether some picks are pattern picks and so a second weft is needed.</summary>
    public bool HasPatternPicks => PickRoles.Contains(ThreadRole.Pattern);

    /// <summary>Whether some ends are pattern ends and so a second warp is needed.</summary>
    public bool HasPatternEnds => EndRoles.Contains(ThreadRole.Pattern);

    /// <summary>The same weave carried across a warp, cut off where the size ends.</summary>
    /// <param name="size">Ends and picks wanted.</param>
    /// <exception cref="Quantities.InputProblemException">The size is outside its limits.</exception>
    public Weave Sized(WeaveSize size) => Sized(size, 0);

    /// <summary>The same weave carried across a warp, begun some way into the threading.</summary>
    /// <param name="size">Ends and picks wanted.</param>
    /// <param name="skippedEnds">Ends of the repeat left out at the left edge; 0 or more.</param>
    /// <exception cref="Quantities.InputProblemException">The size is outside its limits.</exception>
    public Weave Sized(WeaveSize size, int skippedEnds)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(skippedEnds);
        if (size.Problem is { } problem) throw new Quantities.InputProblemException(problem);
        return this with
        {
            Draft = Draft with
            {
                Threading = Carried(Draft.Threading, size.Ends, skippedEnds),
                Treadling = Carried(Draft.Treadling, Draft.Treadling.IsEmpty ? 0 : size.Picks, 0),
                LiftPlan = Carried(Draft.LiftPlan, Draft.LiftPlan.IsEmpty ? 0 : size.Picks, 0),
                WarpOrder = Draft.WarpOrder.From(skippedEnds),
            },
            EndRoles = Carried(EndRoles, size.Ends, skippedEnds),
            PickRoles = Carried(PickRoles, size.Picks, 0),
        };
    }

    private static ImmutableArray<T> Carried<T>(ImmutableArray<T> repeat, int count, int skipped)
    {
        ImmutableArray<T>.Builder all = ImmutableArray.CreateBuilder<T>(count);
        for (int i = 0; i < count; i++) all.Add(repeat[(i + skipped) % repeat.Length]);
        return all.MoveToImmutable();
    }
}
