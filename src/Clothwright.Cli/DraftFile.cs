using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Wif;

namespace Clothwright.Cli;

/// <summary>Drafts kept in files.</summary>
internal static class DraftFile
{
    /// <summary>File-name endings that hold a draft.</summary>
    public static readonly string[] Endings = [".wif", ".png", ".txt", ".csv"];

    /// <summary>Reads a draft from a file.</summary>
    /// <param name="path">Path as typed.</param>
    /// <exception cref="InputProblemException">The file holds no draft.</exception>
    public static WovenDraft Read(string path)
    {
        byte[] bytes = InputFile.Read(path);
        return WifConversion.ToDraft(WifReader.Read(bytes).At(path).Document).At(path);
    }
}
