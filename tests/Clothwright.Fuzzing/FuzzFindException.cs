namespace Clothwright.Fuzzing;

/// <summary>A file was read, but what was read breaks a promise.</summary>
/// <param name="message">The promise.</param>
public sealed class FuzzFindException(string message) : Exception(message);
