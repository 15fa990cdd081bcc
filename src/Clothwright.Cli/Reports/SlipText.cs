using System.Text;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;

namespace Clothwright.Cli.Reports;

/// <summary>What slips will look like, for a person.</summary>
internal static class SlipText
{
    private const int MostEnds = 96;
    private const int MostPicks = 48;

    /// <summary>The slips one after the other, and the cloth with all of them in it.</summary>
    public static string Of(IReadOnlyList<(Draft Before, Slip Slip, SlipEffect Effect)> steps)
    {
        var text = new StringBuilder();
        foreach ((Draft before, Slip slip, SlipEffect effect) in steps)
        {
            WrappedText.Append(text, slip.Describe(before), "", "");
            WrappedText.Append(text, $"Looks: {effect.Looks}", "  ", "  ");
            WrappedText.Append(text, Floats(effect), "  ", "  ");
            WrappedText.Append(text, $"Mend: {slip.Mend(before, before.Picks).Words}", "  ", "  ");
        }

        SlipEffect last = steps[^1].Effect;
        text.AppendLine().AppendLine("The cloth, first pick at the bottom; ^ where it differs in the last slip:");
        text.Append(Grid(last));
        return text.ToString().TrimEnd();
    }

    private static string Floats(SlipEffect effect)
    {
        (LongestFloats before, LongestFloats after) = (effect.Before, effect.After);
        (string Kind, int Before, int After)[] kinds =
        [
            ("warp on the face", before.WarpFace, after.WarpFace), ("warp on the back", before.WarpBack, after.WarpBack),
            ("weft on the face", before.WeftFace, after.WeftFace), ("weft on the back", before.WeftBack, after.WeftBack),
        ];
        string[] changes = [.. kinds.Where(k => k.Before != k.After).Select(k => $"{k.Kind} {k.Before} becomes {k.After}")];
        string crossings = effect.Changed.Length == 1 ? "1 crossing differs" : $"{effect.Changed.Length} crossings differ";
        return changes.Length == 0 ? $"{crossings}; the longest floats stay as they are." : $"{crossings}; longest floats: {string.Join("; ", changes)}.";
    }

    // Threads that lie right keep their mark; each changed line is pointed at from below or beside.
    private static string Grid(SlipEffect effect)
    {
        Drawdown cloth = effect.Cloth;
        int ends = Math.Min(cloth.Ends, MostEnds);
        int picks = Math.Min(cloth.Picks, MostPicks);
        HashSet<int> changedEnds = [.. effect.Changed.Select(c => c.End)];
        HashSet<int> changedPicks = [.. effect.Changed.Select(c => c.Pick)];
        bool across = changedPicks.Count < changedEnds.Count;
        var text = new StringBuilder();
        for (int pick = picks - 1; pick >= 0; pick--)
        {
            for (int end = 0; end < ends; end++) text.Append(cloth[pick, end] ? '#' : '.');
            text.AppendLine(across && changedPicks.Contains(pick) ? $"  < pick {pick + 1}" : "");
        }

        if (!across) text.AppendLine(string.Concat(Enumerable.Range(0, ends).Select(e => changedEnds.Contains(e) ? '^' : ' ')).TrimEnd());
        if (ends < cloth.Ends || picks < cloth.Picks) text.AppendLine($"(the first {ends} of {cloth.Ends} ends and {picks} of {cloth.Picks} picks)");
        return text.ToString();
    }
}
