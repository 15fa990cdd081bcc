using System.Globalization;
using System.Security;
using System.Text;
using Clothwright.Core.Weaves;

namespace Clothwright.Client.Drafting;

/// <summary>Draws a draft as a picture file that any drawing program opens.</summary>
internal static class DraftPicture
{
    private const int Cell = 12;

    /// <summary>One repeat as SVG, in ink on white.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="turns">Which way round.</param>
    /// <param name="inNumbers">Whether cells hold numbers.</param>
    public static string Svg(Draft draft, DraftTurns turns, bool inNumbers)
    {
        bool lifts = !draft.LiftPlan.IsEmpty;
        int columns = lifts ? draft.Shafts : draft.Treadles;
        int width = draft.Ends + 1 + columns;
        int height = draft.Picks + 1 + draft.Shafts;
        int left = turns.TreadsLeft ? columns + 1 : 0;
        int top = turns.ThreadingBelow ? 0 : draft.Shafts + 1;
        int End(int end) => left + (turns.EndsFromRight ? draft.Ends - 1 - end : end);
        int Pick(int pick) => top + (turns.FirstPickAtTop ? pick : draft.Picks - 1 - pick);
        int Shaft(int shaft) => turns.ThreadingBelow ? draft.Picks + shaft : draft.Shafts - shaft;
        int Column(int column) => turns.TreadsLeft ? columns - column : draft.Ends + column;
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-1 -1 {width * Cell + 2} {height * Cell + 2}\" width=\"{width * Cell + 2}\" height=\"{height * Cell + 2}\">");
        svg.Append(CultureInfo.InvariantCulture, $"<title>{SecurityElement.Escape(draft.Name)}</title><rect x=\"-1\" y=\"-1\" width=\"100%\" height=\"100%\" fill=\"#fff\"/>");
        svg.Append("<g font-family=\"sans-serif\" font-size=\"10\" text-anchor=\"middle\" fill=\"#23272c\">");
        Drawdown cloth = draft.Drawdown();
        var path = new StringBuilder();
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            for (int end = 0; end < cloth.Ends; end++)
            {
                if (cloth[pick, end]) Square(path, End(end), Pick(pick));
            }
        }

        void Mark(int x, int y, int number)
        {
            if (inNumbers) svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x * Cell + Cell / 2}\" y=\"{y * Cell + Cell - 3}\">{number}</text>");
            else Square(path, x, y);
        }

        for (int end = 0; end < draft.Ends; end++)
        {
            foreach (int shaft in draft.Threading[end].Members()) Mark(End(end), Shaft(shaft), shaft);
        }

        for (int pick = 0; pick < draft.Picks; pick++)
        {
            foreach (int column in (lifts ? draft.LiftPlan : draft.Treadling)[pick].Members()) Mark(Column(column), Pick(pick), column);
        }

        for (int treadle = 1; !lifts && treadle <= draft.Treadles; treadle++)
        {
            foreach (int shaft in draft.TieUp[treadle - 1].Members()) Mark(Column(treadle), Shaft(shaft), shaft);
        }

        svg.Append("</g><path fill=\"#23272c\" d=\"").Append(path).Append("\"/><path fill=\"none\" stroke=\"#8a8578\" stroke-width=\".5\" d=\"");
        Lattice(svg, left, top, draft.Ends, draft.Picks);
        Lattice(svg, left, turns.ThreadingBelow ? draft.Picks + 1 : 0, draft.Ends, draft.Shafts);
        Lattice(svg, turns.TreadsLeft ? 0 : draft.Ends + 1, top, columns, draft.Picks);
        if (!lifts) Lattice(svg, turns.TreadsLeft ? 0 : draft.Ends + 1, turns.ThreadingBelow ? draft.Picks + 1 : 0, columns, draft.Shafts);
        return svg.Append("\"/></svg>").ToString();
    }

    private static void Square(StringBuilder path, int x, int y) => path.Append(CultureInfo.InvariantCulture, $"M{x * Cell} {y * Cell}h{Cell}v{Cell}h-{Cell}z");

    private static void Lattice(StringBuilder path, int x, int y, int columns, int rows)
    {
        for (int i = 0; i <= columns; i++) path.Append(CultureInfo.InvariantCulture, $"M{(x + i) * Cell} {y * Cell}v{rows * Cell}");
        for (int j = 0; j <= rows; j++) path.Append(CultureInfo.InvariantCulture, $"M{x * Cell} {(y + j) * Cell}h{columns * Cell}");
    }
}
