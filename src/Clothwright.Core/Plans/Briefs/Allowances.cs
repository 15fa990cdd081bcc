using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.Briefs;

/// <summary>Allowances the weaver knows better than the rules, from her own samples. Null: the rule is used.</summary>
public sealed record Allowances
{
    /// <summary>Nothing is known better.</summary>
    public static Allowances None { get; } = new();

    /// <summary>Warp taken up by weaving, off tension, as a share of the warp's length.</summary>
    public Ratio? WarpTakeUp { get; init; }

    /// <summary>Width lost from the reed to the cloth off tension, as a share of the width in the reed.</summary>
    public Ratio? DrawIn { get; init; }

    /// <summary>Length lost in finishing, as a share of the length off the loom.</summary>
    public Ratio? ShrinkageInLength { get; init; }

    /// <summary>Width lost in finishing, as a share of the width off the loom.</summary>
    public Ratio? ShrinkageInWidth { get; init; }

    /// <summary>Weft lost in joins, tails and on the shuttle, as a share of the weft in the cloth.</summary>
    public Ratio? WeftWaste { get; init; }

    /// <summary>Warp that cannot be woven on this loom.</summary>
    public Length? LoomWaste { get; init; }
}
