namespace Clothwright.Client.Pages;

/// <summary>How long a piece of work took in this browser.</summary>
/// <param name="What">The work.</param>
/// <param name="MedianMilliseconds">Median of its runs, in milliseconds.</param>
public readonly record struct Timing(string What, double MedianMilliseconds);
