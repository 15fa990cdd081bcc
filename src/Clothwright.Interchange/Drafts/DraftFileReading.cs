using System.Collections.Immutable;

namespace Clothwright.Interchange.Drafts;

/// <summary>What came of reading a file of a draft.</summary>
/// <param name="Woven">The draft with its threads.</param>
/// <param name="Form">What the file was.</param>
/// <param name="Warnings">What was not as it should be, each with its place, for a person to read.</param>
public sealed record DraftFileReading(WovenDraft Woven, DraftFileForm Form, ImmutableArray<string> Warnings);
