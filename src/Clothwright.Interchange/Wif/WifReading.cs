using System.Collections.Immutable;

namespace Clothwright.Interchange.Wif;

/// <summary>What came of reading a file.</summary>
/// <param name="Document">What the file holds.</param>
/// <param name="Warnings">What was not as it should be, in the order it was met.</param>
public sealed record WifReading(WifDocument Document, ImmutableArray<WifWarning> Warnings);
