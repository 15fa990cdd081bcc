using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Cli.Commands;

/// <summary>Reads how a yarn is made.</summary>
internal static class ConstructionWord
{
    /// <summary>Every word, with commas between.</summary>
    public static string All { get; } = string.Join(", ", Enum.GetNames<YarnConstruction>().Select(n => n.ToLowerInvariant()));

    /// <summary>The construction.</summary>
    /// <param name="text">As typed; case does not matter.</param>
    /// <param name="where">Which option it is.</param>
    /// <exception cref="InputProblemException">The word names no construction.</exception>
    public static YarnConstruction Read(string text, string where)
    {
        string plain = text.Trim().Replace('é', 'e');
        return !int.TryParse(plain, out _) && Enum.TryParse(plain, ignoreCase: true, out YarnConstruction construction)
            ? construction
            : throw new InputProblemException(new InputProblem(
                $"\"{text}\" is not a way of making yarn.",
                where,
                $"Use one of {All}."));
    }
}
