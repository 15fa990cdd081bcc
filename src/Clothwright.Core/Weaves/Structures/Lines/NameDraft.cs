using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Name draft: the letters of a name or a sentence become an overshot threading, to be read by those who know.</summary>
public static class NameDraft
{
    private const int MostLetters = 500;

    /// <summary>Letters to shafts, with incidental ends to keep odd and even by turns.</summary>
    public static Rule Rule { get; } = new(
        "name draft",
        "shaft = place in the alphabet (A = 0) mod 4 + 1; between two letters both odd or both even the shaft next above the first; mirrored without repeating the end threads; woven as drawn in with tabby",
        new Source(SourceKind.Derivation, "a rule of our own; books vary"));

    /// <summary>The threading of a name.</summary>
    /// <param name="name">A name; what is not a letter from A to Z is passed over.</param>
    /// <param name="mirrored">Gone through forwards and backwards.</param>
    /// <returns>Shafts 1 to 4; where first and last end would clash round the repeat, one more end follows.</returns>
    /// <exception cref="InputProblemException">There are no letters, or more than 500.</exception>
    public static ImmutableArray<int> Threading(string name, bool mirrored = true)
    {
        ImmutableArray<int> ends = Letters(name);
        if (mirrored) ends = [.. ends, .. ends.Take(ends.Length - 1).Skip(1).Reverse()];
        return NeighbouringPairs.AreNext(ends[^1], ends[0]) ? ends : ends.Add(DrawOrder.Wrap(ends[^1] + 1, 4));
    }

    /// <summary>The ends that the letters make, forwards only.</summary>
    /// <inheritdoc cref="Threading" />
    public static ImmutableArray<int> Letters(string name)
    {
        int[] shafts = [.. name.ToUpperInvariant().Where(char.IsAsciiLetterUpper).Take(MostLetters + 1).Select(c => (c - 'A') % 4 + 1)];
        if (shafts.Length is 0 or > MostLetters)
        {
            throw new InputProblemException(new InputProblem(
                shafts.Length == 0 ? $"\"{name}\" has no letters." : $"The name has more than {MostLetters} letters.",
                "name",
                $"Write 1 to {MostLetters} letters from A to Z, for example MARSH."));
        }

        var ends = new List<int>();
        foreach (int shaft in shafts)
        {
            if (ends.Count > 0 && (ends[^1] - shaft) % 2 == 0) ends.Add(DrawOrder.Wrap(ends[^1] + 1, 4));
            ends.Add(shaft);
        }

        return [.. ends];
    }

    /// <summary>One repeat.</summary>
    /// <param name="name">A name; what is not a letter from A to Z is passed over.</param>
    /// <param name="mirrored">Gone through forwards and backwards, for a balanced figure.</param>
    /// <exception cref="InputProblemException">There are no letters, or more than 500.</exception>
    public static Weave Of(string name, bool mirrored = true) =>
        Overshot.AsDrawnIn("name draft", Rule, Threading(name, mirrored), OvershotFashion.Star);
}
