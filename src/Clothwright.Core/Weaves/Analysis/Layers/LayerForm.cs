namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>What layers become by the way the shuttles go from one to another.</summary>
public enum LayerForm
{
    /// <summary>There is one layer, or none.</summary>
    OneCloth,

    /// <summary>No shuttle goes from one layer to another.</summary>
    SeparateCloths,

    /// <summary>Two layers joined at one side: opened, they are a cloth of double width.</summary>
    DoubleWidth,

    /// <summary>Two layers joined at both sides.</summary>
    Tube,

    /// <summary>Three or more layers, joined each to the next at sides that alternate: opened, a cloth of so many widths.</summary>
    ManyFold,

    /// <summary>Three or more layers, each joined to the next and the last to the first.</summary>
    Spiral,

    /// <summary>Joined in another way.</summary>
    Otherwise,
}
