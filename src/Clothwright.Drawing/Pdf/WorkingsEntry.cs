namespace Clothwright.Drawing.Pdf;

/// <summary>A figure of the appendix as it is printed.</summary>
/// <param name="Number">Its number, by which others refer to it.</param>
/// <param name="IsFigure">Whether it is a figure of the plan, or else only goes into one.</param>
/// <param name="Equation">The figure with its name, in metric and customary units, and its range.</param>
/// <param name="How">How it came to be: the rule or its number, the source, and what went in.</param>
internal sealed record WorkingsEntry(int Number, bool IsFigure, string Equation, string How);
