using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing;

/// <summary>One part of the length of a warp.</summary>
/// <param name="Name">What it becomes, for example <c>first scarf</c>.</param>
/// <param name="Use">What it is used for.</param>
/// <param name="Length">Length of warp that it uses.</param>
public sealed record WarpPart(string Name, WarpPartUse Use, Length Length);
