namespace Clothwright.Drawing.Fonts;

/// <summary>The bundled faces by what they are used for.</summary>
internal enum FontFace
{
    /// <summary>Running text and figures.</summary>
    Text,

    /// <summary>Labels and column heads.</summary>
    Strong,

    /// <summary>Captions and notes.</summary>
    Italic,

    /// <summary>Headings.</summary>
    Heading,
}
