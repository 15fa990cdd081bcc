using Clothwright.Core.Weaves;

namespace Clothwright.Interchange.Drafts;

/// <summary>A draft with what its threads look like, as files carry it.</summary>
/// <param name="Draft">Threading, tie-up, treadling or lift plan.</param>
/// <param name="Warp">The ends; one entry an end wherever a list is given.</param>
/// <param name="Weft">The picks; one entry a pick wherever a list is given.</param>
public sealed record WovenDraft(Draft Draft, WovenThreads Warp, WovenThreads Weft)
{
    /// <summary>A draft whose threads are not described.</summary>
    /// <param name="draft">The draft.</param>
    public static WovenDraft Of(Draft draft) => new(draft, WovenThreads.Plain, WovenThreads.Plain);
}
