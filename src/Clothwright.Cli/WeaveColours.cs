using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli;

/// <summary>Colours for the yarns of a weave that lives by them, so that pictures and files show the figure.</summary>
internal static class WeaveColours
{
    // Marsh ink, reed stubble, samphire, clay, evening water, driftwood: apart in lightness too.
    private static readonly SrgbColour[] Yarns =
    [
        new(0x26, 0x3b, 0x4a), new(0xe9, 0xdf, 0xc6), new(0x6f, 0x86, 0x4b), new(0xa6, 0x55, 0x3d), new(0x7b, 0x9c, 0xb5), new(0xb9, 0xa0, 0x7a),
    ];

    /// <summary>The draft of a weave; its yarns in colours where the weave names them.</summary>
    /// <param name="weave">The weave.</param>
    public static WovenDraft Of(Weave weave)
    {
        Draft draft = weave.Draft with { Name = weave.Name };
        if (weave.YarnNames.IsEmpty) return WovenDraft.Of(draft);
        return new WovenDraft(draft, In(draft.WarpOrder, draft.Ends), In(draft.WeftOrder, draft.Picks));
    }

    private static WovenThreads In(ThreadOrder order, int threads) =>
        new() { Colours = [.. Enumerable.Range(0, threads).Select(t => Yarns[order[t] % Yarns.Length])] };
}
