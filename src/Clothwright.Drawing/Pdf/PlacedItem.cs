namespace Clothwright.Drawing.Pdf;

/// <summary>An item with its place on a page.</summary>
/// <param name="Item">The item.</param>
/// <param name="Y">Upper edge in points from the top of the page's body.</param>
internal readonly record struct PlacedItem(FlowItem Item, float Y)
{
    /// <summary>0-based column.</summary>
    public int Column { get; init; }

    /// <summary>Whether it was said before and is only said again, such as the head of a table.</summary>
    public bool IsAgain { get; init; }
}
