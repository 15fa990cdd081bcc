namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>A heading that a reader can go to.</summary>
/// <param name="Title">Its words.</param>
/// <param name="Level">1 for a section, 2 for a step in it.</param>
/// <param name="Page">0-based page.</param>
/// <param name="Top">Upper edge in points from the bottom of the page.</param>
internal sealed record Bookmark(string Title, int Level, int Page, float Top);
