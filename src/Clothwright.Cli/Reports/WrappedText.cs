using System.Text;

namespace Clothwright.Cli.Reports;

/// <summary>Lines broken between words, so that they read well on a screen and on paper.</summary>
internal static class WrappedText
{
    /// <summary>Characters in a line.</summary>
    public const int LineLength = 100;

    /// <summary>Adds a sentence as an item of a list: a dot before its first line, the others set in.</summary>
    public static void Append(StringBuilder text, string sentence) => Append(text, sentence, "· ", "  ");

    /// <summary>Adds a sentence.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="sentence">The words.</param>
    /// <param name="first">What stands before the first line.</param>
    /// <param name="others">What stands before each other line.</param>
    public static void Append(StringBuilder text, string sentence, string first, string others)
    {
        var line = new StringBuilder(first);
        int start = first.Length;
        foreach (string word in sentence.Split(' '))
        {
            if (line.Length > start && line.Length + word.Length > LineLength)
            {
                text.AppendLine(line.ToString().TrimEnd());
                line.Clear().Append(others);
                start = others.Length;
            }

            line.Append(word).Append(' ');
        }

        text.AppendLine(line.ToString().TrimEnd());
    }
}
