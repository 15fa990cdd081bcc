using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Drafts.Marks;

/// <summary>The key under a draft with marks: each sign beside what it means and where it is met.</summary>
internal static class ClothMarksKey
{
    private const int MostNamed = 8;

    /// <summary>The letter of a layer, A on top.</summary>
    public static string LayerLetter(int layer) => layer < 26 ? ((char)('A' + layer)).ToString() : $"{layer + 1}";

    /// <summary>The figure made taller for the key, and wider where its words need it.</summary>
    public static Figure Under(Figure draft, DraftLayout at, ClothMarks found)
    {
        float cell = at.Cell;
        var style = new TextStyle(FontFace.Text, Math.Max(6, cell * 0.8f), Palette.Ink);
        float row = Math.Max(style.LineHeight, cell * 1.3f);
        float y = draft.Height + (found.Layers.IsEmpty ? cell * 0.8f : cell * 1.4f);
        float x = cell * 0.5f, text = x + cell * 3;
        var marks = new List<Mark>();
        float width = draft.Width;
        foreach ((string name, string words) in Entries(found))
        {
            float middle = y + row / 2;
            marks.AddRange(Sign(name, x, middle, cell));
            marks.Add(new LabelMark("key", words, text, middle + style.Size * 0.36f, LabelAlign.Start, style));
            width = Math.Max(width, text + new TextRun(words, style.Face, style.Size).Width + cell * 0.5f);
            y += row;
        }

        return draft with { Width = width, Height = y + cell * 0.5f, Marks = [.. draft.Marks, .. marks], Title = $"{draft.Title}. {string.Join(". ", Entries(found).Select(e => e.Words))}" };
    }

    private static IEnumerable<(string Name, string Words)> Entries(ClothMarks found)
    {
        if (found.IsEmpty)
        {
            yield return ("nothing", $"Nothing to mark: no float {found.FloatsInWords}, no loose thread, every turn from the left caught.");
            yield break;
        }

        foreach (FloatKind kind in Enum.GetValues<FloatKind>())
        {
            ImmutableArray<ThreadFloat> floats = [.. found.Floats.Where(f => f.Kind == kind)];
            if (floats.IsEmpty) continue;
            bool back = kind is FloatKind.WarpBack or FloatKind.WeftBack;
            bool warp = kind is FloatKind.WarpFace or FloatKind.WarpBack;
            string longest = floats.Any(f => f.Endless) ? "some without end" : $"the longest {floats.Max(f => f.Length)}";
            yield return (back ? "back" : "face", string.Create(CultureInfo.InvariantCulture, $"{(warp ? "warp" : "weft")} float {found.FloatsInWords}, on the {(back ? "back" : "face")}: {floats.Length}, {longest}"));
        }

        if (!found.LooseEnds.IsEmpty || !found.LoosePicks.IsEmpty)
        {
            string loose = string.Join("; ", new[] { Named("end", found.LooseEnds), Named("pick", found.LoosePicks) }.Where(t => t.Length > 0));
            yield return ("loose", $"nothing holds this thread: {loose}");
        }

        if (!found.Layers.IsEmpty) yield return ("layer", $"layer, from the top: {found.Layers.Length} that do not hang together");
        foreach (ClothSide side in Enum.GetValues<ClothSide>())
        {
            ImmutableArray<int> picks = [.. found.Turns.Where(t => t.Turn.Side == side).Select(t => t.Turn.Pick % found.PicksOfRepeat).Distinct().Order()];
            if (!picks.IsEmpty) yield return (side == ClothSide.Left ? "turn-left" : "turn-right", $"shuttle started from the left misses the {(side == ClothSide.Left ? "left" : "right")} edge end after {Named("pick", picks)}");
        }
    }

    private static string Named(string thread, ImmutableArray<int> threads)
    {
        if (threads.IsEmpty) return "";
        string more = threads.Length > MostNamed ? $" and {threads.Length - MostNamed} more" : "";
        return $"{thread}{(threads.Length == 1 ? "" : "s")} {string.Join(' ', threads.Take(MostNamed).Select(t => t + 1))}{more}";
    }

    private static IEnumerable<Mark> Sign(string name, float x, float middle, float cell)
    {
        switch (name)
        {
            case "face" or "back":
                return ClothMarksInk.Line("key-float", [[(x, middle), (x + cell * 2.4f, middle)]], cell, name == "back");
            case "loose":
                return [new BoxesMark("key-loose", [new Box(x, middle - cell * 0.4f, cell * 2.4f, cell * 0.8f)], null, Palette.Madder, cell * 0.18f)];
            case "layer":
                var style = new TextStyle(FontFace.Strong, cell * 0.75f, Palette.Madder);
                return [new LabelMark("key-layer", "A B", x + cell * 1.2f, middle + style.Size * 0.36f, LabelAlign.Middle, style)];
            case "turn-left" or "turn-right":
                bool right = name == "turn-left";
                return [new LinesMark("key-turn", [ClothMarksInk.Triangle(x + cell * (right ? 0.95f : 1.45f), middle, cell, right)], Palette.Madder, cell * 0.1f)];
            default:
                return [];
        }
    }
}
