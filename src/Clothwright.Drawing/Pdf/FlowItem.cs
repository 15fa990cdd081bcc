using SkiaSharp;

namespace Clothwright.Drawing.Pdf;

/// <summary>Something that stands on a page and is never cut: a line of text, a row of a table, a picture.</summary>
/// <param name="Height">Height in points.</param>
/// <param name="Draw">Draws it, given its left and upper edge in points.</param>
internal sealed record FlowItem(float Height, Action<SKCanvas, float, float> Draw)
{
    /// <summary>Space above it in points, left out at the top of a page.</summary>
    public float SpaceBefore { get; init; }

    /// <summary>Whether it must stand on the same page as the item after it.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Whether it begins a page.</summary>
    public bool StartsPage { get; init; }

    /// <summary>What is said again above it when it comes first on a page, such as the head of a table; null for nothing.</summary>
    public FlowItem? HeadOnNewPage { get; init; }
}
