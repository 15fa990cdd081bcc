using System.Collections.Immutable;

namespace Clothwright.Drawing.Fonts;

/// <summary>Text in which faces change.</summary>
internal static partial class TextWrap
{
    /// <summary>Breaks texts that follow one another into lines.</summary>
    /// <param name="texts">The texts, each in its face.</param>
    /// <param name="size">Size in points.</param>
    /// <param name="width">Width of a line in points, above 0.</param>
    public static List<MixedLine> Mixed(IReadOnlyList<(string Text, FontFace Face)> texts, float size, float width)
    {
        var lines = new List<MixedLine>();
        var runs = new List<(List<string> Words, FontFace Face, float X)>();
        float used = 0;
        foreach ((string text, FontFace face) in texts)
        {
            float blank = Blank(face, size);
            foreach (string word in Words(PrintableText.Clean(text)).SelectMany(w => Parts(w, face, size, width)))
            {
                float wide = new TextRun(word, face, size).Width;
                if (runs.Count > 0 && used + blank + wide > width) Close(goesOn: true);
                if (runs.Count > 0) used += blank;
                if (runs.Count > 0 && runs[^1].Face == face) runs[^1].Words.Add(word);
                else runs.Add(([word], face, used));
                used += wide;
            }
        }

        if (runs.Count > 0) Close(goesOn: false);
        return lines;

        void Close(bool goesOn)
        {
            ImmutableArray<(TextRun, float)> closed =
                [.. runs.Select((r, i) => (new TextRun(string.Join(' ', r.Words), r.Face, size) { GoesOn = goesOn || i < runs.Count - 1 }, r.X))];
            lines.Add(new MixedLine(closed));
            runs.Clear();
            used = 0;
        }
    }

    // Words are measured one by one; what kerning across a blank may add is kept free.
    private static float Blank(FontFace face, float size) =>
        new TextRun("n n", face, size).Width - 2 * new TextRun("n", face, size).Width + KernedBlank * size;
}
