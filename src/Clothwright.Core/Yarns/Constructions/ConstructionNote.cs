namespace Clothwright.Core.Yarns;

/// <summary>How a yarn is made and what that means for sett, warp and weft.</summary>
/// <param name="Construction">The construction.</param>
/// <param name="Name">Name for people, for example <c>bouclé</c>.</param>
/// <param name="What">What it is, one sentence.</param>
/// <param name="ThicknessFollowsCount">Whether the thickness follows from count and fibre; otherwise wrap it to measure.</param>
/// <param name="ForTheSett">What it means for the sett.</param>
/// <param name="AsWeft">What to mind when it is woven in.</param>
/// <param name="AsWarp">What to mind when it is warped; null where nothing.</param>
public sealed record ConstructionNote(
    YarnConstruction Construction,
    string Name,
    string What,
    bool ThicknessFollowsCount,
    string ForTheSett,
    string AsWeft,
    YarnAdvice? AsWarp);
