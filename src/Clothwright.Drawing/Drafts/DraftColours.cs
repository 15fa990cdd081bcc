using System.Collections.Immutable;
using Clothwright.Core.Colours;

namespace Clothwright.Drawing.Drafts;

/// <summary>Colours of the threads of a draft.</summary>
/// <param name="Ends">From end 1; taken round again when there are fewer than ends. Empty: no colours are shown.</param>
/// <param name="Picks">From pick 1; taken round again when there are fewer than picks. Empty: no colours are shown.</param>
public sealed record DraftColours(ImmutableArray<SrgbColour> Ends, ImmutableArray<SrgbColour> Picks)
{
    /// <summary>No colours.</summary>
    public static DraftColours None { get; } = new([], []);

    internal SrgbColour End(int end) => Ends[end % Ends.Length];

    internal SrgbColour Pick(int pick) => Picks[pick % Picks.Length];
}
