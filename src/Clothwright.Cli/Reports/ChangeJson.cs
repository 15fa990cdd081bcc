using System.Text.Json.Nodes;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Cli.Reports;

/// <summary>The smallest change that makes a draft weavable on a loom, for a program. Threads are numbered from 1.</summary>
internal static class ChangeJson
{
    /// <summary>Which ends and picks become like others, and the draft after that; null where nothing has to change.</summary>
    public static JsonObject? Of(DraftReduction? change) => change is null ? null : new JsonObject
    {
        ["ends"] = new JsonArray([.. change.Ends.Select(e => new JsonObject { ["end"] = e.End + 1, ["like"] = e.Like + 1 })]),
        ["picks"] = new JsonArray([.. change.Picks.Select(p => new JsonObject { ["pick"] = p.Pick + 1, ["like"] = p.Like + 1 })]),
        ["crossingsChanged"] = change.CrossingsChanged,
        ["proved"] = change.Proved,
        ["text"] = change.InWords,
        ["draft"] = FewestDraft.Of(change.Cloth).TryGet(out Draft? draft) ? DraftNotation.Format(draft) : null,
    };
}
