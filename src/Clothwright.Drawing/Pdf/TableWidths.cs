using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Pdf;

/// <summary>Shares the width of a page among the columns of a table.</summary>
internal static class TableWidths
{
    private const float Narrowest = 12;
    private const float WritingWidth = 115;

    /// <summary>
    /// Each column gets what its longest cell needs; if that is too much, the widest columns give way, down to an equal share;
    /// if there is room left, the headed columns of words get it in equal parts, so the table fills the width.
    /// </summary>
    /// <param name="table">The table.</param>
    /// <param name="style">Style of the cells.</param>
    /// <param name="headStyle">Style of the column heads.</param>
    /// <param name="width">Width to share, in points.</param>
    /// <param name="gap">Space between columns.</param>
    /// <param name="chip">Space of a colour chip in the first column.</param>
    public static float[] Share(TableBlock table, TextStyle style, TextStyle headStyle, float width, float gap, float chip)
    {
        int count = table.Columns.Length;
        bool chips = table.Rows.Any(r => r.Chip is not null);
        float[] wanted = new float[count];
        for (int i = 0; i < count; i++)
        {
            int column = i;
            float head = new TextRun(table.Columns[i].Heading, headStyle.Face, headStyle.Size).Width;
            float cells = table.Rows.Select(r => new TextRun(r.Cells[column], style.Face, style.Size).Width).DefaultIfEmpty(0).Max();
            if (table.Columns[i].IsBlank) cells = Math.Max(cells, WritingWidth);
            wanted[i] = Math.Max(Narrowest, MathF.Ceiling(Math.Max(head, cells)) + 0.5f + (i == 0 && chips ? chip : 0));
        }

        float free = width - gap * (count - 1);
        return wanted.Sum() <= free ? Widen(wanted, table, free) : Narrow(wanted, free);
    }

    private static float[] Widen(float[] wanted, TableBlock table, float free)
    {
        int[] words = [.. Enumerable.Range(0, wanted.Length).Where(i => !table.Columns[i].IsNumber && table.Columns[i].Heading.Length > 0)];
        if (words.Length == 0) words = [0];
        float each = (free - wanted.Sum()) / words.Length;
        foreach (int i in words) wanted[i] += each;
        return wanted;
    }

    // Finds the width above which columns are cut so that all fit.
    private static float[] Narrow(float[] wanted, float free)
    {
        float low = 0;
        float high = wanted.Max();
        for (int step = 0; step < 40; step++)
        {
            float cut = (low + high) / 2;
            if (wanted.Sum(w => Math.Min(w, cut)) > free) high = cut;
            else low = cut;
        }

        return [.. wanted.Select(w => Math.Min(w, low))];
    }
}
