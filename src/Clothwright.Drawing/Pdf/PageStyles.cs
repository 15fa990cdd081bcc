using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Pdf;

/// <summary>The kinds of text on a page; none is smaller than 8 points.</summary>
internal static class PageStyles
{
    public static TextStyle Title { get; } = new(FontFace.Heading, 27, Palette.Ink) { LineHeight = 32 };

    public static TextStyle Makes { get; } = new(FontFace.Text, 11.5f, Palette.Ink) { LineHeight = 16.5f };

    public static TextStyle Heading { get; } = new(FontFace.Heading, 15.5f, Palette.Woad) { LineHeight = 20 };

    public static TextStyle SmallHeading { get; } = new(FontFace.Heading, 10.5f, Palette.Woad) { LineHeight = 14 };

    public static TextStyle Body { get; } = new(FontFace.Text, 9.6f, Palette.Ink) { LineHeight = 14 };

    public static TextStyle Strong { get; } = new(FontFace.Strong, 9.6f, Palette.Ink) { LineHeight = 14 };

    public static TextStyle ColumnHead { get; } = new(FontFace.Strong, 8.2f, Palette.ThinInk) { LineHeight = 11.5f };

    public static TextStyle Note { get; } = new(FontFace.Italic, 8.4f, Palette.ThinInk) { LineHeight = 11.6f };

    public static TextStyle Dense { get; } = new(FontFace.Text, 8.8f, Palette.Ink) { LineHeight = 12.6f };

    public static TextStyle Tick { get; } = new(FontFace.Text, 8.4f, Palette.Ink) { LineHeight = 14 };

    public static TextStyle Small { get; } = new(FontFace.Text, 8, Palette.Ink) { LineHeight = 10.2f };

    public static TextStyle SmallNumber { get; } = new(FontFace.Strong, 8, Palette.Madder) { LineHeight = 10.2f };

    public static TextStyle StepNumber { get; } = new(FontFace.Heading, 17, Palette.Madder) { LineHeight = 14 };

    public static TextStyle Furniture { get; } = new(FontFace.Text, 8, Palette.ThinInk) { LineHeight = 11 };
}
