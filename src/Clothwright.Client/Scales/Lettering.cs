using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Clothwright.Client.Scales;

/// <summary>Words in a drawing; the markup language keeps the element's own name for itself.</summary>
public sealed class Lettering : ComponentBase
{
    /// <summary>Where the words stand, across.</summary>
    [Parameter, EditorRequired]
    public string X { get; set; } = "0";

    /// <summary>Where their line stands, down.</summary>
    [Parameter, EditorRequired]
    public string Y { get; set; } = "0";

    /// <summary>Which of start, middle and end stands at <see cref="X"/>.</summary>
    [Parameter]
    public string Anchor { get; set; } = "middle";

    /// <summary>Style class.</summary>
    [Parameter]
    public string Class { get; set; } = "";

    /// <summary>The words.</summary>
    [Parameter, EditorRequired]
    public string Words { get; set; } = "";

    /// <inheritdoc />
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", X);
        builder.AddAttribute(2, "y", Y);
        builder.AddAttribute(3, "text-anchor", Anchor);
        builder.AddAttribute(4, "class", Class);
        builder.AddContent(5, Words);
        builder.CloseElement();
    }
}
