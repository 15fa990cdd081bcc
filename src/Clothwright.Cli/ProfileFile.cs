using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Cli;

/// <summary>Profiles kept in files.</summary>
internal static class ProfileFile
{
    /// <summary>Reads a profile from a small draft, or from a grid or picture of the small cloth.</summary>
    /// <param name="path">Path as typed.</param>
    /// <exception cref="InputProblemException">The file holds no draft, or one that is no profile.</exception>
    public static Profile Read(string path)
    {
        Parsed<Profile> profile = Profile.Of(DraftFile.Read(path).Woven.Draft);
        return profile.Problem is { } problem
            ? throw new InputProblemException(problem with { Where = $"--profile, {problem.Where}" })
            : profile.Value;
    }
}
