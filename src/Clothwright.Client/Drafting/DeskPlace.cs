namespace Clothwright.Client.Drafting;

/// <summary>A cell of a draft.</summary>
/// <param name="Part">The part.</param>
/// <param name="Thread">0-based end, pick or treadle; in the cloth the end.</param>
/// <param name="Number">Shaft or treadle from 1; in the cloth the 0-based pick; 0 in the colours.</param>
public readonly record struct DeskPlace(DeskPart Part, int Thread, int Number);
