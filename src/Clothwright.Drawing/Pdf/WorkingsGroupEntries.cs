using System.Collections.Immutable;

namespace Clothwright.Drawing.Pdf;

/// <summary>The figures of one group, numbered.</summary>
/// <param name="Heading">What they are about.</param>
/// <param name="Entries">The figures, each followed by those that first went into it.</param>
/// <param name="Elsewhere">Figures of the group that are worked in another: name, value and number each.</param>
internal sealed record WorkingsGroupEntries(string Heading, ImmutableArray<WorkingsEntry> Entries, ImmutableArray<string> Elsewhere);
