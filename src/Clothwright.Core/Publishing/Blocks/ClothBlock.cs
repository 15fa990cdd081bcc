using Clothwright.Core.Cloths.Look;
namespace Clothwright.Core.Publishing.Blocks;

/// <summary>The face and the back of a cloth, side by side at true size and true colour.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Caption">A sentence under the pictures; empty for none.</param>
public sealed record ClothBlock(LookDescription Cloth, string Caption = "") : HandoutBlock;
