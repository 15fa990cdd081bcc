namespace Clothwright.Core.Yarns;

/// <summary>A yarn that was found.</summary>
/// <param name="Index">Its place in what was searched, from 0.</param>
/// <param name="Yarn">The yarn.</param>
/// <param name="Difference">CIEDE2000 difference from the colour sought; null if none was sought.</param>
public sealed record YarnMatch(int Index, Yarn Yarn, double? Difference);
