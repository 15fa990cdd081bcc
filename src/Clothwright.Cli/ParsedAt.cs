using Clothwright.Core.Quantities;

namespace Clothwright.Cli;

/// <summary>Takes what was read, or reports the problem at the place where the person typed it.</summary>
internal static class ParsedAt
{
    /// <summary>The value.</summary>
    /// <param name="parsed">The outcome of reading.</param>
    /// <param name="where">Argument or option as typed, for example <c>--weave</c>.</param>
    /// <exception cref="InputProblemException">The text was not read.</exception>
    public static T At<T>(this Parsed<T> parsed, string where)
        where T : notnull =>
        parsed.Succeeded ? parsed.Value : throw new InputProblemException(parsed.Problem with { Where = where });
}
