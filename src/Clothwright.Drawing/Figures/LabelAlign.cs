namespace Clothwright.Drawing.Figures;

/// <summary>Which part of a label stands at its place.</summary>
internal enum LabelAlign
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
