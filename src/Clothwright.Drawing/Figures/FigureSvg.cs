using System.Globalization;
using System.Text;
using System.Xml;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Figures;

/// <summary>Writes a figure as SVG 1.1: one element a mark, its name as class. Text is written as text.</summary>
internal static class FigureSvg
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>Writes the figure as UTF-8.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="stream">Where to write; stays open.</param>
    public static void Write(Figure figure, Stream stream)
    {
        var settings = new XmlWriterSettings { Indent = true, IndentChars = " ", NewLineChars = "\n", Encoding = new UTF8Encoding(false), CloseOutput = false };
        using XmlWriter xml = XmlWriter.Create(stream, settings);
        xml.WriteStartElement("svg", Namespace);
        xml.WriteAttributeString("viewBox", $"0 0 {Number(figure.Width)} {Number(figure.Height)}");
        xml.WriteAttributeString("width", $"{Number(figure.Width)}pt");
        xml.WriteAttributeString("height", $"{Number(figure.Height)}pt");
        xml.WriteAttributeString("role", "img");
        xml.WriteElementString("title", Namespace, PrintableText.Clean(figure.Title));
        foreach (Mark mark in figure.Marks) WriteMark(xml, mark);
        xml.WriteEndElement();
    }

    private static void WriteMark(XmlWriter xml, Mark mark)
    {
        switch (mark)
        {
            case BoxesMark boxes:
                xml.WriteStartElement("path", Namespace);
                xml.WriteAttributeString("class", boxes.Name);
                xml.WriteAttributeString("d", PathOf(boxes));
                xml.WriteAttributeString("fill", boxes.Fill?.ToString() ?? "none");
                if (boxes.Stroke is { } stroke)
                {
                    xml.WriteAttributeString("stroke", stroke.ToString());
                    xml.WriteAttributeString("stroke-width", Number(boxes.StrokeWidth));
                }

                xml.WriteEndElement();
                break;
            case LinesMark lines:
                xml.WriteStartElement("path", Namespace);
                xml.WriteAttributeString("class", lines.Name);
                xml.WriteAttributeString("d", PathOf(lines));
                xml.WriteAttributeString("fill", "none");
                xml.WriteAttributeString("stroke", lines.Colour.ToString());
                xml.WriteAttributeString("stroke-width", Number(lines.LineWidth));
                if (lines.Dashed) xml.WriteAttributeString("stroke-dasharray", "1.5 1.5");
                xml.WriteEndElement();
                break;
            case LabelMark label:
                xml.WriteStartElement("text", Namespace);
                xml.WriteAttributeString("class", label.Name);
                xml.WriteAttributeString("x", Number(label.X));
                xml.WriteAttributeString("y", Number(label.Baseline));
                xml.WriteAttributeString("font-size", Number(label.Style.Size));
                xml.WriteAttributeString("font-family", label.Style.Face == FontFace.Heading ? "Caladea, serif" : "'Open Sans', sans-serif");
                if (label.Style.Face is FontFace.Strong or FontFace.Heading) xml.WriteAttributeString("font-weight", "600");
                if (label.Style.Face == FontFace.Italic) xml.WriteAttributeString("font-style", "italic");
                if (label.Align != LabelAlign.Start) xml.WriteAttributeString("text-anchor", label.Align == LabelAlign.Middle ? "middle" : "end");
                xml.WriteAttributeString("fill", label.Style.Colour.ToString());
                xml.WriteString(PrintableText.Clean(label.Text));
                xml.WriteEndElement();
                break;
            default:
                throw new ArgumentException($"A {mark.GetType().Name} has no form in SVG.", nameof(mark));
        }
    }

    private static string PathOf(BoxesMark boxes)
    {
        var path = new StringBuilder();
        foreach (Box box in boxes.Boxes)
        {
            path.Append(CultureInfo.InvariantCulture, $"M{Number(box.X)} {Number(box.Y)}h{Number(box.Width)}v{Number(box.Height)}h{Number(-box.Width)}z");
        }

        return path.ToString();
    }

    private static string PathOf(LinesMark lines)
    {
        var path = new StringBuilder();
        foreach (var chain in lines.Chains)
        {
            for (int i = 0; i < chain.Length; i++)
            {
                path.Append(i == 0 ? 'M' : 'L').Append(Number(chain[i].X)).Append(' ').Append(Number(chain[i].Y));
            }
        }

        return path.ToString();
    }

    private static string Number(float value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
