using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Pdf;

/// <summary>Numbered steps and cautions.</summary>
internal sealed partial class HandoutFlow
{
    private const float StepIndent = 30;

    private void AddSteps(StepsBlock block)
    {
        float space = _blockSpace;
        float raised = 0.36f * (PageStyles.StepNumber.Size - PageStyles.Strong.Size); // number and title on one baseline
        foreach (HandoutStep step in block.Steps)
        {
            _steps++;
            var number = new TextRun(_steps.ToString(CultureInfo.InvariantCulture), PageStyles.StepNumber.Face, PageStyles.StepNumber.Size);
            List<TextRun> title = Wrap(step.Title, PageStyles.Strong, TextWidth - StepIndent);
            for (int i = 0; i < title.Count; i++)
            {
                TextRun line = title[i];
                bool first = i == 0;
                _items.Add(new FlowItem(PageStyles.Strong.LineHeight, (canvas, x, y) =>
                {
                    if (first) PageInk.Text(canvas, number, PageStyles.StepNumber, x, y - raised);
                    PageInk.Text(canvas, line, PageStyles.Strong, x + StepIndent, y);
                })
                { SpaceBefore = first ? space : 0, KeepWithNext = true });
            }

            AddParagraph(step.Text, PageStyles.Body, TextWidth, StepIndent, 0, keepWithNext: !step.Details.IsEmpty);
            foreach (string detail in step.Details) AddDetail(detail);
            space = 9;
        }
    }

    private void AddDetail(string text)
    {
        const float dash = StepIndent + 12;
        List<TextRun> lines = Wrap(text, PageStyles.Body, TextWidth - dash);
        var mark = new TextRun("–", FontFace.Text, PageStyles.Body.Size);
        for (int i = 0; i < lines.Count; i++)
        {
            TextRun line = lines[i];
            bool first = i == 0;
            _items.Add(new FlowItem(PageStyles.Body.LineHeight, (canvas, x, y) =>
            {
                if (first) PageInk.Text(canvas, mark, PageStyles.Body, x + StepIndent, y);
                PageInk.Text(canvas, line, PageStyles.Body, x + dash, y);
            })
            { SpaceBefore = first ? 1.5f : 0, KeepWithNext = i < lines.Count - 1 && lines.Count < 4 });
        }
    }

    // A bar and the word itself, so that a caution is known without colour.
    private void AddCautions(CautionsBlock block)
    {
        const float bar = 3;
        const float indent = 12;
        float space = _blockSpace;
        foreach (string caution in block.Cautions)
        {
            List<TextRun> lines = Wrap(caution, PageStyles.Body, TextWidth - indent - 50);
            var word = new TextRun("Caution", PageStyles.Strong.Face, PageStyles.Strong.Size);
            float high = Math.Max(1, lines.Count) * PageStyles.Body.LineHeight + 4;
            if (high > height / 2)
            {
                AddParagraph($"Caution: {caution}", PageStyles.Body, TextWidth, 0, space);
            }
            else
            {
                _items.Add(new FlowItem(high, (canvas, x, y) =>
                {
                    PageInk.Fill(canvas, x, y, bar, high, Palette.Madder);
                    PageInk.Text(canvas, word, PageStyles.Strong with { Colour = Palette.Madder }, x + indent, y + 2);
                    PageInk.Lines(canvas, lines, PageStyles.Body, x + indent + 50, y + 2);
                })
                { SpaceBefore = space });
            }

            space = 6;
        }
    }
}
