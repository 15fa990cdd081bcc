using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Core.Weaves.Analysis;

/// <summary>The answers that change with every edit of a draft and are wanted at once: floats, layers, changes of face.</summary>
/// <param name="Floats">Floats, as an endless repeat.</param>
/// <param name="Layers">Whether the cloth hangs together, and its layers.</param>
/// <param name="Counts">Changes of face of each thread.</param>
public sealed record ClothOutline(ClothFloats Floats, ClothLayers Layers, WeaveCounts Counts)
{
    /// <summary>Looks at a drawdown; its lines are sorted once for all three answers.</summary>
    /// <param name="cloth">The drawdown.</param>
    public static ClothOutline Of(Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return Of(new ClothLines(cloth));
    }

    /// <summary>Weaves a draft and looks at its cloth; ends and picks that weave alike are known from the draft.</summary>
    /// <param name="draft">A draft with ends and picks.</param>
    /// <param name="cloth">The cloth it weaves.</param>
    public static ClothOutline Of(Draft draft, out Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(draft);
        cloth = draft.Drawdown();
        return Of(ClothLines.Of(draft, cloth));
    }

    internal static ClothOutline Of(ClothLines lines) =>
        new(ClothFloats.Of(lines, ClothReading.Repeat), ClothLayers.Of(lines), WeaveCounts.Of(lines));
}
