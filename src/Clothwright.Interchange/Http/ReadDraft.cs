using System.Collections.Immutable;

namespace Clothwright.Interchange.Http;

/// <summary>A file of a draft, as the server read it.</summary>
/// <param name="Wif">The draft as WIF 1.1.</param>
/// <param name="Warnings">What was not as it should be, each with its place, for a person to read.</param>
public sealed record ReadDraft(string Wif, ImmutableArray<string> Warnings);
