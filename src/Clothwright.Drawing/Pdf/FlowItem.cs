using Clothwright.Drawing.Pdf.Writing;

namespace Clothwright.Drawing.Pdf;

/// <summary>Something that stands on a page and is never cut: a line of text, a row of a table, a picture.</summary>
/// <param name="Height">Height in points.</param>
/// <param name="Draw">Draws it, given its left and upper edge in points.</param>
internal sealed record FlowItem(float Height, Action<PageCanvas, float, float> Draw)
{
    /// <summary>Space above it in points, left out at the top of a page.</summary>
    public float SpaceBefore { get; init; }

    /// <summary>Whether it must stand on the same page, and in the same column, as the item after it.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Whether it begins a page.</summary>
    public bool StartsPage { get; init; }

    /// <summary>Columns of the stretch of the page that it stands in; 1 for the whole width.</summary>
    public int Columns { get; init; } = 1;

    /// <summary>What is said again above it when it comes first on a page, such as the head of a table; null for nothing.</summary>
    public FlowItem? HeadOnNewPage { get; init; }

    /// <summary>The words of a bookmark that leads here; empty for none.</summary>
    public string Bookmark { get; init; } = "";

    /// <summary>Level of the bookmark: 1 for a section, 2 for a step.</summary>
    public int BookmarkLevel { get; init; } = 1;
}
