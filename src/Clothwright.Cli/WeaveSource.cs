using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli;

/// <summary>Finds the draft a person means: a weave by name, a draft in notation, or a file.</summary>
internal static class WeaveSource
{
    /// <summary>The draft.</summary>
    /// <param name="text">A weave's name, a draft as <c>threading | tie-up | treadling</c>, or the path of a file.</param>
    /// <param name="where">Which argument it is.</param>
    /// <param name="warnings">What was not as it should be in a file.</param>
    /// <exception cref="InputProblemException">It is none of these.</exception>
    public static WovenDraft Read(string text, string where, out IReadOnlyList<string> warnings) => Read(text, where, out warnings, out _);

    /// <summary>The draft, and how many layers it is meant to have.</summary>
    /// <param name="text">A weave's name, a draft as <c>threading | tie-up | treadling</c>, or the path of a file.</param>
    /// <param name="where">Which argument it is.</param>
    /// <param name="warnings">What was not as it should be in a file.</param>
    /// <param name="layers">Layers that a weave asked for by name is meant to have; null for a file or a notation, which do not say.</param>
    public static WovenDraft Read(string text, string where, out IReadOnlyList<string> warnings, out int? layers)
    {
        warnings = [];
        layers = null;
        if (LooksLikeFile(text))
        {
            DraftFileReading reading = DraftFile.Read(text);
            warnings = reading.Warnings;
            return reading.Woven;
        }

        if (text.Contains('|', StringComparison.Ordinal)) return WovenDraft.Of(DraftNotation.Parse(text, where).Value);
        Weave weave = WeaveCatalogue.Make(text).At(where);
        layers = weave.Layers;
        return WeaveColours.Of(weave);
    }

    private static bool LooksLikeFile(string text) =>
        File.Exists(text) || DraftFile.Endings.Any(e => text.EndsWith(e, StringComparison.OrdinalIgnoreCase));
}
