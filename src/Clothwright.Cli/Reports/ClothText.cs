using System.Text;
using Clothwright.Cli.Cloths;
using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Hand;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Cli.Reports;

/// <summary>A foreseen cloth for a person.</summary>
internal static class ClothText
{
    /// <summary>The cloths, one after the other.</summary>
    /// <param name="cloths">At least one.</param>
    /// <param name="back">Whether the back is asked for first.</param>
    /// <param name="style">Units.</param>
    public static string Of(IEnumerable<ForeseenCloth> cloths, bool back, UnitStyle style) =>
        string.Join("\n\n", cloths.Select(c => One(c, back, style)));

    private static string One(ForeseenCloth foreseen, bool back, UnitStyle style)
    {
        ClothGeometry cloth = foreseen.Geometry;
        ClothHand hand = cloth.Hand;
        string F(IDerived figure) => figure.Working.Format(style);
        string Share(Derived<Ratio> share) => $"{share.Value.Percent:0.#} %";
        string Likely(IDerived figure) => figure.Working.Spread.StandardDeviation == 0 ? "" :
            $", likely {QuantityText.Format(figure.Working.Kind, figure.Working.Lower95, style)} to {QuantityText.Format(figure.Working.Kind, figure.Working.Upper95, style)}";
        var text = new StringBuilder();
        text.AppendLine($"{foreseen.Name}: {F(cloth.Question.Ends)} by {F(cloth.Question.Picks)}");
        text.AppendLine($"  Mass       {F(foreseen.Mass)}{Likely(foreseen.Mass)}");
        text.AppendLine($"  Thickness  {F(cloth.Thickness)}{Likely(cloth.Thickness)}, unpressed; threads {F(cloth.WarpDiameter)} and {F(cloth.WeftDiameter)}");
        text.AppendLine($"  Cover      {Share(cloth.Cover)} of the area (warp {Share(cloth.WarpCover)} of the width, weft {Share(cloth.WeftCover)} of the length)");
        text.AppendLine($"  Tightness  {Share(cloth.Tightness)} of the closest these yarns can lie in this weave{(cloth.IsJammed ? ": too close to weave" : "")}");
        text.AppendLine($"  Crimp      warp {Share(cloth.WarpCrimp)}, weft {Share(cloth.WeftCrimp)} of the cloth; take-up warp {Share(cloth.WarpTakeUp)}, weft {Share(cloth.WeftTakeUp)} of the yarn");
        text.AppendLine($"  Hand       {hand.Words}");
        foreach (string reason in hand.Reasons.Take(hand.Reasons.Length - 1)) WrappedText.Append(text, reason, "             ", "             ");
        FusedColours fused = cloth.FusedColours();
        (FusedFace first, FusedFace second) = back ? (fused.Back, fused.Face) : (fused.Face, fused.Back);
        text.AppendLine($"  Colour     {Seen(back ? "back" : "face", first)}; {Seen(back ? "face" : "back", second)}");
        WrappedText.Append(text, Apart(fused), "             ", "             ");
        text.AppendLine($"  Pattern    {PatternSeen.Words(cloth, front: !back)}");
        if (foreseen.Puckering is { } puckering)
        {
            WrappedText.Append(text, $"  Flatness   {PuckeringSeen.Words(puckering, style)}", "", "             ");
        }

        foreach (string note in foreseen.Notes) WrappedText.Append(text, note);
        return text.ToString().TrimEnd();
    }

    private static string Seen(string side, FusedFace face) => $"{side} {ColourWords.Of(face.Colour)}, {face.Colour.ToSrgb()}, from afar ({face.Shares.Warp * 100:0} % warp)";

    private static string Apart(FusedColours fused)
    {
        double apart = ColourDifference.Ciede2000(CieLab.From(fused.Face.Colour), CieLab.From(fused.Back.Colour));
        return apart < 1 ? "From afar both sides look the same." : $"From afar the sides differ by {apart:0.0} (CIEDE2000; about 1 is just seen side by side).";
    }
}
