using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Tags;

namespace Clothwright.Drawing.Pdf;

/// <summary>Numbered steps with a box to tick, and cautions.</summary>
internal sealed partial class HandoutFlow
{
    private const float TickSize = 10;
    private const float StepNumberIndent = 18;
    private const float StepIndent = 46;
    private const float SmallTick = 8;
    private const float TickSpace = 15;
    private const int MostTickRows = 8;

    private void AddSteps(StepsBlock block)
    {
        float space = _blockSpace;
        float raised = 0.36f * (PageStyles.StepNumber.Size - PageStyles.Strong.Size); // number and title on one baseline
        TagNode list = _section.Add(TagRole.List, TagRole.Numbered);
        foreach (HandoutStep step in block.Steps)
        {
            _steps++;
            TagNode item = list.Add(TagRole.ListItem);
            TagNode label = item.Add(TagRole.Label);
            TagNode body = item.Add(TagRole.ListBody);
            TagNode heading = body.Add(TagRole.StepHeading);
            string numbered = string.Create(CultureInfo.InvariantCulture, $"{_steps} {step.Title}");
            var number = new TextRun(_steps.ToString(CultureInfo.InvariantCulture), PageStyles.StepNumber.Face, PageStyles.StepNumber.Size);
            List<TextRun> title = Wrap(step.Title, PageStyles.Strong, TextWidth - StepIndent);
            for (int i = 0; i < title.Count; i++)
            {
                TextRun line = title[i];
                bool first = i == 0;
                _items.Add(new FlowItem(PageStyles.Strong.LineHeight, (canvas, x, y) =>
                {
                    if (first)
                    {
                        PageInk.TickBox(canvas, x, y + (PageStyles.Strong.LineHeight - TickSize) / 2, TickSize);
                        PageInk.Text(canvas, number, PageStyles.StepNumber, x + StepNumberIndent, y - raised, label);
                    }

                    PageInk.Text(canvas, line, PageStyles.Strong, x + StepIndent, y, heading);
                })
                { SpaceBefore = first ? space : 0, KeepWithNext = true, Bookmark = first ? numbered : "", BookmarkLevel = 2 });
            }

            AddParagraph(step.Text, PageStyles.Body, TextWidth, StepIndent, 0, body.Add(TagRole.Paragraph), keepWithNext: !step.Details.IsEmpty);
            if (!step.Details.IsEmpty)
            {
                TagNode details = body.Add(TagRole.List, TagRole.Unnumbered);
                foreach (string detail in step.Details) AddDetail(detail, details.Add(TagRole.ListItem));
            }

            foreach (TickRow row in step.Ticks) AddTicks(row, body);
            space = 10;
        }
    }

    private void AddDetail(string text, TagNode owner)
    {
        const float dash = StepIndent + 12;
        List<TextRun> lines = Wrap(text, PageStyles.Body, TextWidth - dash);
        TagNode label = owner.Add(TagRole.Label);
        TagNode body = owner.Add(TagRole.ListBody);
        var mark = new TextRun("–", FontFace.Text, PageStyles.Body.Size);
        for (int i = 0; i < lines.Count; i++)
        {
            TextRun line = lines[i];
            bool first = i == 0;
            _items.Add(new FlowItem(PageStyles.Body.LineHeight, (canvas, x, y) =>
            {
                if (first) PageInk.Text(canvas, mark, PageStyles.Body, x + StepIndent, y, label);
                PageInk.Text(canvas, line, PageStyles.Body, x + dash, y, body);
            })
            { SpaceBefore = first ? 1.5f : 0, KeepWithNext = i < lines.Count - 1 && lines.Count < 4 });
        }
    }

    // Small boxes in columns of one width, each with what a tick there says.
    private void AddTicks(TickRow row, TagNode owner)
    {
        AddParagraph(row.Caption, PageStyles.Note, width, StepIndent, 4, owner.Add(TagRole.Paragraph), keepWithNext: true);
        float room = width - StepIndent;
        TextRun[] marks = [.. row.Marks.Select(m => TextWrap.Fitted(m, PageStyles.Tick, room - SmallTick - TickSpace))];
        float cell = Math.Min(room, marks.Select(m => m.Width).DefaultIfEmpty(0).Max() + SmallTick + TickSpace);
        int across = Math.Max(1, (int)(room / cell));
        cell = room / across;
        TagNode words = owner.Add(TagRole.Paragraph);
        for (int from = 0; from < marks.Length; from += across)
        {
            TextRun[] line = marks[from..Math.Min(marks.Length, from + across)];
            _items.Add(new FlowItem(PageStyles.Tick.LineHeight, (canvas, x, y) =>
            {
                for (int i = 0; i < line.Length; i++)
                {
                    float left = x + StepIndent + i * cell;
                    PageInk.TickBox(canvas, left, y + (PageStyles.Tick.LineHeight - SmallTick) / 2, SmallTick);
                    PageInk.Text(canvas, line[i], PageStyles.Tick, left + SmallTick + 4, y, words);
                }
            })
            { SpaceBefore = from == 0 ? 1 : 0, KeepWithNext = from + across < marks.Length && (from == 0 || from + 2 * across >= marks.Length || marks.Length <= MostTickRows * across) });
        }
    }

    // A bar and the word itself, so that a caution is known without colour.
    private void AddCautions(CautionsBlock block)
    {
        const float bar = 3;
        const float indent = 12;
        float space = _blockSpace;
        var word = new TextRun(wording.Tell("Caution"), PageStyles.Strong.Face, PageStyles.Strong.Size) { GoesOn = true };
        foreach (string caution in block.Cautions)
        {
            List<TextRun> lines = Wrap(caution, PageStyles.Body, TextWidth - indent - 50);
            TagNode owner = _section.Add(TagRole.Paragraph);
            float high = Math.Max(1, lines.Count) * PageStyles.Body.LineHeight + 4;
            if (high > height / 2)
            {
                AddParagraph($"{wording.Tell("Caution")}: {caution}", PageStyles.Body, TextWidth, 0, space, owner);
            }
            else
            {
                _items.Add(new FlowItem(high, (canvas, x, y) =>
                {
                    PageInk.Fill(canvas, x, y, bar, high, Palette.Madder);
                    PageInk.Text(canvas, word, PageStyles.Strong with { Colour = Palette.Madder }, x + indent, y + 2, owner);
                    PageInk.Lines(canvas, lines, PageStyles.Body, x + indent + 50, y + 2, owner);
                })
                { SpaceBefore = space });
            }

            space = 6;
        }
    }
}
