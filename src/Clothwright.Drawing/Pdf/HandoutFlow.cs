using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Wordings;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Tags;

namespace Clothwright.Drawing.Pdf;

/// <summary>Turns a handout into items of a page flow and the structure they belong to; one partial file for each kind of block.</summary>
/// <param name="width">Width of a page's body in points.</param>
/// <param name="height">Height of a page's body in points.</param>
/// <param name="wording">Language of the words that the page itself adds.</param>
internal sealed partial class HandoutFlow(float width, float height, Wording wording)
{
    private const float ReadingWidth = 440;
    private readonly List<FlowItem> _items = [];
    private TagNode _section = new(TagRole.Section);
    private float _blockSpace;
    private int _steps;
    private int _cloths;
    private double _clothMetres;

    /// <summary>Space between columns, in points.</summary>
    public static float ColumnSpace => 18;

    /// <summary>The parts of the document in reading order.</summary>
    public TagNode Structure { get; } = new(TagRole.Document);

    private float TextWidth => Math.Min(width, ReadingWidth);

    /// <summary>The items of the handout in reading order.</summary>
    /// <param name="handout">The handout.</param>
    public IReadOnlyList<FlowItem> Compose(Handout handout)
    {
        AddTitle(handout);
        foreach (HandoutSection section in handout.Sections) AddSection(section);
        return _items;
    }

    private void AddTitle(Handout handout)
    {
        AddLines(handout.Title, PageStyles.Title, width, 0, Structure.Add(TagRole.Title));
        AddLines(handout.Makes, PageStyles.Makes, Math.Min(width, 460), 4, Structure.Add(TagRole.Paragraph));
        _items.Add(new FlowItem(2, (canvas, x, y) => PageInk.Rule(canvas, x, y, width, Palette.Ink, 1)) { SpaceBefore = 10 });
    }

    private void AddSection(HandoutSection section)
    {
        int first = _items.Count;
        _section = Structure.Add(TagRole.Section);
        AddLines(section.Heading, PageStyles.Heading, width, 20, _section.Add(TagRole.Heading));
        if (_items.Count > first) _items[first] = _items[first] with { StartsPage = section.StartsPage, Bookmark = section.Heading };
        _blockSpace = 5;
        _cloths = section.Blocks.OfType<ClothBlock>().Count();
        for (int i = 0; i < section.Blocks.Length; i++)
        {
            AddBlock(section.Blocks[i]);
            bool introduces = section.Blocks[i] is ParagraphBlock && i + 1 < section.Blocks.Length && section.Blocks[i + 1] is not ParagraphBlock;
            if (introduces) _items[^1] = _items[^1] with { KeepWithNext = true };
            _blockSpace = 13;
        }
    }

    private void AddBlock(HandoutBlock block)
    {
        switch (block)
        {
            case ParagraphBlock paragraph: AddParagraph(paragraph.Text, PageStyles.Body, TextWidth, 0, _blockSpace, _section.Add(TagRole.Paragraph)); break;
            case FiguresBlock figures: AddFigures(figures); break;
            case TableBlock table: AddTable(table); break;
            case DraftBlock draft: AddDraft(draft); break;
            case ClothBlock cloth: AddCloth(cloth); break;
            case WindingBlock winding: AddWinding(winding); break;
            case WarpStripBlock strip: AddWarpStrip(strip); break;
            case SettScaleBlock scale: AddSettScale(scale); break;
            case MeasureBarBlock bar: AddMeasureBar(bar); break;
            case StepsBlock steps: AddSteps(steps); break;
            case CautionsBlock cautions: AddCautions(cautions); break;
            case WorkingsBlock workings: AddWorkings(workings); break;
            default: throw new ArgumentException($"A {block.GetType().Name} has no form on a page.", nameof(block));
        }
    }

    // Lines that stay together and with what follows: titles, headings.
    private void AddLines(string text, TextStyle style, float wide, float space, TagNode owner)
    {
        foreach (TextRun line in Wrap(text, style, wide))
        {
            _items.Add(new FlowItem(style.LineHeight, (canvas, x, y) => PageInk.Text(canvas, line, style, x, y, owner)) { SpaceBefore = space, KeepWithNext = true });
            space = 0;
        }
    }

    // A paragraph: its first two and its last two lines are not parted.
    private void AddParagraph(string text, TextStyle style, float wide, float indent, float space, TagNode owner, bool keepWithNext = false, int columns = 1)
    {
        List<TextRun> lines = Wrap(text, style, wide - indent);
        for (int i = 0; i < lines.Count; i++)
        {
            TextRun line = lines[i];
            bool last = i == lines.Count - 1;
            _items.Add(new FlowItem(style.LineHeight, (canvas, x, y) => PageInk.Text(canvas, line, style, x + indent, y, owner))
            {
                SpaceBefore = i == 0 ? space : 0,
                KeepWithNext = last ? keepWithNext : i == 0 || i == lines.Count - 2,
                Columns = columns,
            });
        }
    }

    private static List<TextRun> Wrap(string text, TextStyle style, float wide) => TextWrap.Lines(text, style.Face, style.Size, wide);
}
