namespace Clothwright.Core.Wordings;

/// <summary>Cuts a sentence at semicolons, colons, commas, brackets, plus signs, "and" and "or".</summary>
/// <param name="and">How "and" is told.</param>
/// <param name="or">How "or" is told.</param>
internal sealed class SentenceCuts(string and, string or)
{
    private static readonly string[] Joints = [" and ", " or ", " + ", " (", "; ", ": ", ", "];

    /// <summary>The parts, in order, none of them empty.</summary>
    /// <param name="text">The sentence.</param>
    public SentenceCut[] Of(string text)
    {
        var cuts = new List<SentenceCut>();
        int from = 0;
        for (int at = 1; at < text.Length; at++)
        {
            int length = JointAt(text, at);
            if (length == 0) continue;
            string joint = Told(text.Substring(at, length));
            if (at > from) cuts.Add(new SentenceCut(from, at, joint));
            else if (cuts.Count > 0) cuts[^1] = cuts[^1] with { Joint = cuts[^1].Joint + joint };
            from = at + length;
            at = from - 1;
        }

        if (from < text.Length) cuts.Add(new SentenceCut(from, text.Length, ""));
        return [.. cuts];
    }

    private string Told(string joint) => joint switch
    {
        " and " => $" {and} ",
        " or " => $" {or} ",
        _ => joint,
    };

    // How long a joint is that begins here; 0 if none does.
    private static int JointAt(string text, int at) => text[at] switch
    {
        ')' => at + 1 < text.Length && text[at + 1] == ' ' ? 2 : 1,
        ' ' or ';' or ':' or ',' => Joints.FirstOrDefault(j => string.CompareOrdinal(text, at, j, 0, j.Length) == 0)?.Length ?? 0,
        _ => 0,
    };
}
