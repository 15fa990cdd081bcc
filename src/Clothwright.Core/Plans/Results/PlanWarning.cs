namespace Clothwright.Core.Plans.Results;

/// <summary>Something that goes against the trade or the material, yet may be wanted: said, with advice, never refused.</summary>
/// <param name="Id">Short name, stable, for example <c>chenille-warp</c>.</param>
/// <param name="Where">The decision it concerns, for example <c>warp.order</c>.</param>
/// <param name="Text">What is the matter, as a sentence with its numbers.</param>
/// <param name="Advice">What to do about it, as an instruction.</param>
public sealed record PlanWarning(string Id, string Where, string Text, string Advice)
{
    /// <inheritdoc />
    public override string ToString() => $"{Text} {Advice}";
}
