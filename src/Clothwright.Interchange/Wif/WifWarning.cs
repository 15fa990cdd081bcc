namespace Clothwright.Interchange.Wif;

/// <summary>Something in a file that is not as the standard wants it, and what was made of it.</summary>
/// <param name="Section">Section, in capitals; empty if it concerns the file as a whole.</param>
/// <param name="Key">Key as written; empty if it concerns the section as a whole.</param>
/// <param name="Line">Line in the file, from 1; 0 where something is missing.</param>
/// <param name="What">What was found, and what was made of it, as a sentence.</param>
public sealed record WifWarning(string Section, string Key, int Line, string What)
{
    /// <summary>The place and the sentence, for example <c>line 12, [WARP] Spacing: …</c>.</summary>
    public override string ToString()
    {
        string place = (Section, Key) switch
        {
            ("", _) => "file",
            (_, "") => $"[{Section}]",
            _ => $"[{Section}] {Key}",
        };
        return Line > 0 ? $"line {Line}, {place}: {What}" : $"{place}: {What}";
    }
}
