using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Drawing.Images;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Grids;

namespace Clothwright.Cli.Faults;

/// <summary>Reads what a weaver sees of her cloth: a grid of marks, a picture in two tones, or a grid written on the command line.</summary>
internal static class SeenCloth
{
    /// <summary>The crossings as seen, first pick first; in a grid of wrong places, the marked ones.</summary>
    /// <param name="text">A file, or a grid such as <c>1100/0110</c>.</param>
    /// <param name="option">The option that gave it.</param>
    /// <exception cref="InputProblemException">It is neither.</exception>
    public static Drawdown Read(string text, string option)
    {
        if (!File.Exists(text) && IsGrid(text)) return TextGrid.Read(text).At(option);
        byte[] bytes = InputFile.Read(text);
        string name = Path.GetFileName(text);
        return DraftFiles.FormOf(bytes) == DraftFileForm.Picture
            ? Under(name, DrawdownPicture.Read(bytes)).Drawdown
            : Under(name, TextGrid.Read(Encoding.UTF8.GetString(bytes)));
    }

    private static bool IsGrid(string text) => text.Contains('/', StringComparison.Ordinal) && text.All(c => c is '0' or '1' or '/' or ' ');

    private static T Under<T>(string name, Parsed<T> parsed)
        where T : notnull =>
        parsed.Problem is { } problem ? throw new InputProblemException(problem with { Where = $"{name}, {problem.Where}" }) : parsed.Value;
}
