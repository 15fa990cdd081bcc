using System.Collections.Immutable;

namespace Clothwright.Interchange.Wif;

/// <summary>A section kept word for word.</summary>
/// <param name="Name">Its name as written, without the brackets.</param>
/// <param name="Lines">Its lines as written, without line ends and without blank lines at the end.</param>
public sealed record WifSection(string Name, ImmutableArray<string> Lines);
