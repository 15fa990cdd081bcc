using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing;

/// <summary>A place on the scale of setts.</summary>
/// <param name="Name">What gives it: a reed with its sley, or a method.</param>
/// <param name="Sett">Ends per width of one layer.</param>
public sealed record SettStop(string Name, Sett Sett)
{
    /// <summary>Whether it is the one that is woven.</summary>
    public bool IsChosen { get; init; }

    /// <summary>Whether it may leave marks along the cloth.</summary>
    public bool MarksLikely { get; init; }
}
