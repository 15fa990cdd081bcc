namespace Clothwright.Fuzzing;

/// <summary>A reader under trial.</summary>
/// <param name="Name">What it reads.</param>
/// <param name="Seeds">Files to mutate.</param>
/// <param name="Words">Pieces that are put into files, because they mean something to the reader.</param>
/// <param name="Try">Reads a file; true if it was read, false if it was refused with a message. Anything else is an exception.</param>
public sealed record FuzzTarget(string Name, IReadOnlyList<byte[]> Seeds, IReadOnlyList<byte[]> Words, Func<byte[], bool> Try);
