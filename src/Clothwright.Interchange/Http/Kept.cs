namespace Clothwright.Interchange.Http;

/// <summary>Something kept on the server, with the number of its last save.</summary>
/// <typeparam name="T">What is kept.</typeparam>
/// <param name="Version">The number of its last save, from 1.</param>
/// <param name="Item">The thing itself.</param>
public sealed record Kept<T>(int Version, T Item)
    where T : notnull;
