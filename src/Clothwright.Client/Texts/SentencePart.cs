using System.Collections.Immutable;

namespace Clothwright.Client.Texts;

/// <summary>A stretch of a text: words, or a place to be filled.</summary>
/// <param name="Text">The words, or the name of the place.</param>
/// <param name="IsPlace">Whether it is a place.</param>
public readonly record struct SentencePart(string Text, bool IsPlace)
{
    /// <summary>Cuts a text at its places.</summary>
    /// <param name="text">Words with places in braces, for example <c>{width} wide</c>.</param>
    public static ImmutableArray<SentencePart> Cut(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var parts = ImmutableArray.CreateBuilder<SentencePart>();
        int from = 0;
        while (from < text.Length)
        {
            int open = text.IndexOf('{', from);
            int close = open < 0 ? -1 : text.IndexOf('}', open);
            if (close < 0)
            {
                parts.Add(new SentencePart(text[from..], false));
                break;
            }

            if (open > from) parts.Add(new SentencePart(text[from..open], false));
            parts.Add(new SentencePart(text[(open + 1)..close], true));
            from = close + 1;
        }

        return parts.ToImmutable();
    }
}
