using Clothwright.Core.Colours;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Worksheets.Beginnings;

/// <summary>A yarn with which a piece begins where none is on the shelf.</summary>
public static class YarnModel
{
    /// <summary>An undyed yarn that suits a kind of piece; its id tells which: <c>cotton</c>, <c>lambswool</c> or <c>wool</c>.</summary>
    /// <param name="kind">The kind.</param>
    /// <remarks>Common practice, no source: cotton for what is washed hot or bears weight, fine wool for what is worn, thicker wool for what warms a bed.</remarks>
    public static YarnEntry For(PieceKind kind) => kind switch
    {
        PieceKind.Towel or PieceKind.Bag or PieceKind.Yardage or PieceKind.Sample => Make("cotton", "8/2", "cotton", "cotton", "#ece4d2"),
        PieceKind.Throw or PieceKind.Blanket => Make("wool", "9/4", "metric", "wool-woollen", "#e6dcc6"),
        _ => Make("lambswool", "14/2", "metric", "wool-worsted", "#e9e1d0"),
    };

    private static YarnEntry Make(string id, string count, string system, string fibre, string colour) => new()
    {
        Id = id,
        Name = $"{count} {id}",
        Count = count,
        CountSystem = system,
        Fibres = [new FibreEntry(fibre, Ratio.FromValue(1))],
        Colour = SrgbColour.Parse(colour).Value,
    };
}
