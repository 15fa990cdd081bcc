using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Pdf.Tags;

/// <summary>A part of a document as a screen reader finds it: a heading, a paragraph, a cell of a table, a picture with its words.</summary>
/// <param name="role">What it is: one of the standard structure types of ISO 32000-1, section 14.8.4.</param>
internal sealed class TagNode(string role)
{
    private readonly List<TagNode> _parts = [];
    private readonly List<(int Page, int Mark)> _marks = [];

    /// <summary>What it is, for example <c>H2</c>, <c>P</c>, <c>TD</c>.</summary>
    public string Role { get; } = role;

    /// <summary>What a picture shows, in words; empty where the text speaks for itself.</summary>
    public string Alternative { get; init; } = "";

    /// <summary>Further properties in PDF syntax, for example the scope of a column head; empty for none.</summary>
    public string Attributes { get; init; } = "";

    /// <summary>The parts in reading order.</summary>
    public IReadOnlyList<TagNode> Parts => _parts;

    /// <summary>The stretches of pages that belong to it: page, 0-based, and mark on the page.</summary>
    public IReadOnlyList<(int Page, int Mark)> Marks => _marks;

    /// <summary>Where a picture lies on its page, in points from the lower left corner; null if not drawn.</summary>
    public Box? Place { get; set; }

    /// <summary>Whether it or a part of it is on a page.</summary>
    public bool IsDrawn => _marks.Count > 0 || _parts.Any(p => p.IsDrawn);

    /// <summary>Adds a part at the end.</summary>
    /// <param name="role">What it is.</param>
    /// <param name="attributes">Further properties in PDF syntax.</param>
    /// <param name="alternative">What a picture shows.</param>
    public TagNode Add(string role, string attributes = "", string alternative = "")
    {
        var part = new TagNode(role) { Attributes = attributes, Alternative = alternative };
        _parts.Add(part);
        return part;
    }

    /// <summary>Notes a stretch of a page that belongs to it.</summary>
    /// <param name="page">0-based page.</param>
    /// <param name="mark">Number of the stretch on the page.</param>
    public void AddMark(int page, int mark) => _marks.Add((page, mark));
}
