namespace Clothwright.Drawing.Pdf.Tags;

/// <summary>The standard structure types in use (ISO 32000-1, section 14.8.4), and their properties.</summary>
internal static class TagRole
{
    public const string Document = "Document";
    public const string Section = "Sect";
    public const string Title = "H1";
    public const string Heading = "H2";
    public const string StepHeading = "H3";
    public const string Paragraph = "P";
    public const string List = "L";
    public const string ListItem = "LI";
    public const string Label = "Lbl";
    public const string ListBody = "LBody";
    public const string Table = "Table";
    public const string Row = "TR";
    public const string Head = "TH";
    public const string Cell = "TD";
    public const string Picture = "Figure";

    public const string ColumnScope = "/O /Table /Scope /Column";
    public const string RowScope = "/O /Table /Scope /Row";
    public const string Numbered = "/O /List /ListNumbering /Decimal";
    public const string Unnumbered = "/O /List /ListNumbering /None";
}
