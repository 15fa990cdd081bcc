using System.Runtime.CompilerServices;
using Xunit;

namespace Clothwright.TestKit;

/// <summary>Holds what a person sees against a file that a person has read and approved.</summary>
public static class Approved
{
    /// <summary>
    /// Compares a text with <c>Approved/NAME</c> beside the calling test. Where they differ, the text is written beside it
    /// as <c>NAME.received</c> and the test fails; read it, and rename it if it is right.
    /// </summary>
    /// <param name="text">The text; line ends do not matter.</param>
    /// <param name="name">File name with its ending, named after what it shows.</param>
    /// <param name="caller">Filled in by the compiler.</param>
    public static void Check(string text, string name, [CallerFilePath] string caller = "")
    {
        string approvedPath = Path.Combine(Path.GetDirectoryName(caller)!, "Approved", name);
        string receivedPath = approvedPath + ".received";
        string actual = text.ReplaceLineEndings("\n");
        string? expected = File.Exists(approvedPath) ? File.ReadAllText(approvedPath).ReplaceLineEndings("\n") : null;
        if (string.Equals(actual, expected, StringComparison.Ordinal))
        {
            File.Delete(receivedPath);
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(approvedPath)!);
        File.WriteAllText(receivedPath, actual);
        Assert.Fail(expected is null
            ? $"Nothing is approved as {name} yet. Read {name}.received and rename it if it is right.\n{actual}"
            : $"{name} differs from what was approved; see {name}.received.\n--- approved\n{expected}\n--- received\n{actual}");
    }
}
