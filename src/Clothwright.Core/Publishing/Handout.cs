using System.Collections.Immutable;

namespace Clothwright.Core.Publishing;

/// <summary>The published pattern as a document: what stands in it and in which order, but not how it is drawn.</summary>
/// <param name="Title">What the piece is called.</param>
/// <param name="Makes">One sentence that says what the handout makes.</param>
/// <param name="Sections">The sections in reading order.</param>
public sealed partial record Handout(string Title, string Makes, ImmutableArray<HandoutSection> Sections)
{
    /// <summary>Who wrote it; empty if not said.</summary>
    public string Author { get; init; } = "";

    /// <summary>Edition as the weaver counts them, for example <c>edition 2</c>; empty if not said.</summary>
    public string Edition { get; init; } = "";
}
