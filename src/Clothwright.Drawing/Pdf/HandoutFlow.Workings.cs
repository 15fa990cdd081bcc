using System.Globalization;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Tags;

namespace Clothwright.Drawing.Pdf;

/// <summary>The appendix: how each figure came to be, in two columns.</summary>
internal sealed partial class HandoutFlow
{
    private const int WorkingsColumns = 2;
    private const float WorkingIndent = 22;

    private float ColumnWidth => (width - (WorkingsColumns - 1) * ColumnSpace) / WorkingsColumns;

    private void AddWorkings(WorkingsBlock block)
    {
        var list = WorkingsList.Of(block, wording);
        bool first = true;
        foreach (WorkingsGroupEntries group in list.Groups)
        {
            AddSmallHeading(group.Heading, first ? _blockSpace : 9);
            first = false;
            TagNode entries = _section.Add(TagRole.List, TagRole.Numbered);
            foreach (WorkingsEntry entry in group.Entries)
            {
                FontFace face = entry.IsFigure ? FontFace.Strong : FontFace.Text;
                AddEntry(entry.Number.ToString(CultureInfo.InvariantCulture), entry.Equation, face, entry.How, entries.Add(TagRole.ListItem));
            }

            if (group.Elsewhere.IsEmpty) continue;
            AddParagraph(wording.Tell("Worked in another place") + $": {string.Join("; ", group.Elsewhere)}.", PageStyles.Small, ColumnWidth, 0, 4, _section.Add(TagRole.Paragraph), columns: WorkingsColumns);
        }

        if (list.Rules.IsEmpty) return;
        AddSmallHeading(wording.Tell("Rules"), 9);
        TagNode rules = _section.Add(TagRole.List, TagRole.Numbered);
        foreach ((string number, string text) in list.Rules) AddEntry(number, text, FontFace.Text, "", rules.Add(TagRole.ListItem));
    }

    private void AddSmallHeading(string text, float space)
    {
        TagNode owner = _section.Add(TagRole.StepHeading);
        foreach (TextRun line in Wrap(text, PageStyles.SmallHeading, ColumnWidth))
        {
            _items.Add(new FlowItem(PageStyles.SmallHeading.LineHeight, (canvas, x, y) => PageInk.Text(canvas, line, PageStyles.SmallHeading, x, y, owner))
            {
                SpaceBefore = space,
                KeepWithNext = true,
                Columns = WorkingsColumns,
                Bookmark = space > 0 ? text : "",
                BookmarkLevel = 2,
            });
            space = 0;
        }
    }

    // The number stands out to the left; an entry of up to six lines is not parted.
    private void AddEntry(string number, string head, FontFace headFace, string text, TagNode owner)
    {
        const int mostKept = 6;
        TagNode label = owner.Add(TagRole.Label);
        TagNode body = owner.Add(TagRole.ListBody);
        var mark = new TextRun(number, PageStyles.SmallNumber.Face, PageStyles.SmallNumber.Size);
        TextStyle style = PageStyles.Small;
        List<MixedLine> lines = TextWrap.Mixed([(head, headFace), (text, style.Face)], style.Size, ColumnWidth - WorkingIndent);
        for (int i = 0; i < lines.Count; i++)
        {
            MixedLine line = lines[i];
            bool first = i == 0;
            _items.Add(new FlowItem(style.LineHeight, (canvas, x, y) =>
            {
                if (first) PageInk.Text(canvas, mark, PageStyles.SmallNumber, x, y, label);
                foreach ((TextRun run, float left) in line.Runs) PageInk.Text(canvas, run, style, x + WorkingIndent + left, y, body);
            })
            {
                SpaceBefore = first ? 2.5f : 0,
                KeepWithNext = i < lines.Count - 1 && (lines.Count <= mostKept || i == 0 || i == lines.Count - 2),
                Columns = WorkingsColumns,
            });
        }
    }
}
