using System.Collections.Immutable;
using Clothwright.Core.Weaves.Editing;

namespace Clothwright.Client.Drafting;

/// <summary>What is laid over the picture of a draft.</summary>
internal sealed record ShownMarks(DeskPlace Cursor, DeskMarks? Marked, ImmutableArray<Trouble> Troubles);
