namespace Clothwright.Core.Wordings;

/// <summary>A part of a text between two cuts.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Joint">What goes between it and the next, as told.</param>
internal readonly record struct SentenceCut(int Start, int End, string Joint);
