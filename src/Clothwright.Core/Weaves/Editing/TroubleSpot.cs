namespace Clothwright.Core.Weaves.Editing;

/// <summary>A place in a draft: a rectangle of crossings within one repeat, or a thread.</summary>
/// <param name="Ends">The ends; those past the last go on at the first.</param>
/// <param name="Picks">The picks; those past the last go on at the first.</param>
public readonly record struct TroubleSpot(ThreadSpan Ends, ThreadSpan Picks);
