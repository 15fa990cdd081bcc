using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>A draft with the colours of its threads.</summary>
/// <param name="Draft">The draft.</param>
/// <param name="EndColours">Colours of the ends from end 1; taken round again when there are fewer than ends. Empty: not shown.</param>
/// <param name="PickColours">Colours of the picks from pick 1; taken round again when there are fewer than picks. Empty: not shown.</param>
/// <param name="Caption">A sentence under the picture; empty for none.</param>
public sealed record DraftBlock(
    Draft Draft,
    ImmutableArray<SrgbColour> EndColours,
    ImmutableArray<SrgbColour> PickColours,
    string Caption = "") : HandoutBlock;
