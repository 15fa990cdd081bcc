namespace Clothwright.Core.Tests.Wordings;

/// <summary>A pattern of sentences that the sources hold.</summary>
/// <param name="Pattern">The pattern, its places numbered from 0.</param>
/// <param name="File">The file, relative to the sources.</param>
/// <param name="IsName">Whether it may be a short name for the machine: an id, a path, a key. Such a one has no blanks and is told only if a table has it.</param>
internal sealed record SaidSentence(string Pattern, string File, bool IsName);
