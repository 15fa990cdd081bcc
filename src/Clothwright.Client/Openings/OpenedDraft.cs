using System.Collections.Immutable;
using Clothwright.Core.Weaves;

namespace Clothwright.Client.Openings;

/// <summary>A draft from a file that was dropped or chosen.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Draft">The draft.</param>
/// <param name="Warnings">What was not as it should be, each with its place.</param>
public sealed record OpenedDraft(string File, Draft Draft, ImmutableArray<string> Warnings);
