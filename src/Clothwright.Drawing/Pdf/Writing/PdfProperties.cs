using System.Globalization;
using System.Text;
using System.Xml;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>What a document says of itself.</summary>
/// <param name="Title">Its title; shown by readers in place of the file's name.</param>
/// <param name="Language">Language of its words, as a BCP 47 tag.</param>
internal sealed record PdfProperties(string Title, string Language)
{
    private const string Maker = "Clothwright";

    /// <summary>Who wrote it; empty if not said.</summary>
    public string Author { get; init; } = "";

    /// <summary>What it is about.</summary>
    public string Subject { get; init; } = "";

    /// <summary>When it was made; null leaves it out.</summary>
    public DateTimeOffset? Made { get; init; }

    /// <summary>The information dictionary (ISO 32000-1, section 14.3.3).</summary>
    public string Information()
    {
        var entries = new StringBuilder($"<< /Title {PdfSyntax.Text(Title)}");
        if (Author.Length > 0) entries.Append(CultureInfo.InvariantCulture, $" /Author {PdfSyntax.Text(Author)}");
        if (Subject.Length > 0) entries.Append(CultureInfo.InvariantCulture, $" /Subject {PdfSyntax.Text(Subject)}");
        entries.Append(CultureInfo.InvariantCulture, $" /Creator ({Maker}) /Producer ({Maker})");
        if (Made is { } made) entries.Append(CultureInfo.InvariantCulture, $" /CreationDate {PdfSyntax.Date(made)} /ModDate {PdfSyntax.Date(made)}");
        return entries.Append(" >>").ToString();
    }

    /// <summary>The same as metadata (ISO 16684-1), with the claim of ISO 14289-1 that every reader can use the document.</summary>
    public byte[] Metadata()
    {
        using var stream = new MemoryStream();
        stream.Write("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"u8);
        var settings = new XmlWriterSettings { OmitXmlDeclaration = true, Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n", CloseOutput = false };
        using (var xml = XmlWriter.Create(stream, settings))
        {
            xml.WriteStartElement("x", "xmpmeta", "adobe:ns:meta/");
            xml.WriteStartElement("rdf", "RDF", "http://www.w3.org/1999/02/22-rdf-syntax-ns#");
            xml.WriteStartElement("rdf", "Description", null);
            xml.WriteAttributeString("rdf", "about", null, "");
            xml.WriteElementString("pdfuaid", "part", "http://www.aiim.org/pdfua/ns/id/", "1");
            WriteList(xml, "title", "Alt", Title);
            if (Author.Length > 0) WriteList(xml, "creator", "Seq", Author);
            if (Subject.Length > 0) WriteList(xml, "description", "Alt", Subject);
            WriteList(xml, "language", "Bag", Language);
            xml.WriteElementString("pdf", "Producer", "http://ns.adobe.com/pdf/1.3/", Maker);
            const string basic = "http://ns.adobe.com/xap/1.0/";
            xml.WriteElementString("xmp", "CreatorTool", basic, Maker);
            if (Made is { } made)
            {
                string moment = made.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
                xml.WriteElementString("xmp", "CreateDate", basic, moment);
                xml.WriteElementString("xmp", "ModifyDate", basic, moment);
            }

            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteEndElement();
        }

        stream.Write("\n<?xpacket end=\"w\"?>"u8);
        return stream.ToArray();
    }

    private static void WriteList(XmlWriter xml, string name, string kind, string text)
    {
        const string rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
        xml.WriteStartElement("dc", name, "http://purl.org/dc/elements/1.1/");
        xml.WriteStartElement("rdf", kind, rdf);
        xml.WriteStartElement("rdf", "li", rdf);
        if (kind == "Alt") xml.WriteAttributeString("xml", "lang", null, "x-default");
        xml.WriteString(string.Concat(text.EnumerateRunes().Where(IsXml)));
        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static bool IsXml(Rune rune) => !rune.IsBmp || XmlConvert.IsXmlChar((char)rune.Value);
}
