using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Plans;

/// <summary>
/// Two samples worked out again from the worksheet alone, as with pencil and paper: lengths in millimetres, nothing of the program but its
/// washing shrinkage, which rests on a table. Peirce 1937 is solved by halving; the chain is the one the trade teaches.
/// </summary>
public class SamplesByHandTests
{
    private const double Inch = 25.4;

    // The program keeps every figure; the pencil too.
    private const double Close = 1e-6;

    [Fact]
    public void Two_twill_scarves_in_bamboo()
    {
        PlanResult plan = PlanOf("reedbed-scarves");
        const double tex = 590.5412474 / 8 * 2; // ASTM D2260: 8/2 in cotton count
        double thick = Thickness(tex, 0.92);
        const double reed = 2 * 10 / Inch;
        double closest = 1 / (1.5 * thick); // half to three fifths of it, by trade charts; 2/2 twill: two ends to each crossing
        Near(10 * closest * (0.5 + 0.6091) / 2, plan.SettAdvice.Ends.Value.PerCentimetre, 2e-4);

        double drawIn = (TakeUp(1 / reed, 2 * thick, 2 * thick * 2 / 3, 2) + 0.075) / 2; // half by geometry, half by the habit of 5 to 10 %
        double takeUp = (TakeUp(1 / reed, 2 * thick, thick, 2) + 0.10) / 2; // half by geometry, half by the habit of 8 to 12 %
        PiecePlan scarf = plan.Pieces[0];
        Near(drawIn, scarf.DrawIn.Value.Value);
        Near(takeUp, scarf.WarpTakeUp.Value.Value);
        double shrinkage = scarf.ShrinkageInLength.Value.Value;
        Assert.InRange(shrinkage, 0.04, 0.10);

        // Two floating selvedges lie in the width; the rest is whole repeats of four.
        int wanted = (int)Math.Round((210 / (1 - shrinkage) / (1 - drawIn) * reed - 2) / 4) * 4;
        Assert.Equal(wanted + 2, plan.Pieces[0].Ends.Value.Count);
        double reedWidth = (wanted + 2) / reed;
        double offLoom = 1800 / (1 - shrinkage);
        double woven = offLoom / (1 - takeUp);
        const double fringe = 120 / 0.85 + 30;
        double warp = 40 + 150 / (1 - takeUp) + 2 * (woven + 2 * fringe) + 2 * 30 + 600;
        Near(warp / 1000, plan.WarpLength.Value.Metres);
        double picks = Math.Ceiling(offLoom * reed);
        Assert.Equal(picks, scarf.Picks.Value.Count);

        // Four in a hundred of weft is lost in joins; the sample is woven with the first weft.
        double weft = 1.04 * (picks + Math.Ceiling(150 * reed)) * reedWidth / 1000;
        YarnNeed saltmarsh = plan.Yarns.Single(y => y.Yarn.Id == "saltmarsh");
        Near(weft, saltmarsh.Total.Value.Metres, 1e-3);
        Near(weft * tex / 1000 * 14.5 / 227, saltmarsh.Cost!.Value.Amount, 1e-3);
        double grams = ((wanted + 2) * woven + picks * reedWidth) / 1000 * tex / 1000;
        Near(grams, scarf.ClothMass.Value.Grams, 1e-3);
        double washedWidth = reedWidth * (1 - drawIn) * (1 - shrinkage);
        Near(washedWidth / 10, scarf.FinishedWidth.Value.Centimetres);
        Near(grams / (washedWidth / 1000 * 1.8), scarf.MassPerArea.Value.GramsPerSquareMetre, 1e-3);
    }

    [Fact]
    public void A_blanket_of_double_width_in_soft_wool()
    {
        PlanResult plan = PlanOf("slack-water-blanket");
        const double tex = 250; // 100 g in 400 m
        double thick = Thickness(tex, 0.9 * 0.775);
        const double layer = 10 / Inch; // each heddle carries one layer
        double drawIn = (TakeUp(1 / layer, 2 * thick, 2 * thick * 2 / 3, 1) + 0.075) / 2; // half by geometry, half by the habit of 5 to 10 %
        double takeUp = (TakeUp(1 / layer, 2 * thick, thick, 1) + 0.10) / 2; // half by geometry, half by the habit of 8 to 12 %
        PiecePlan blanket = plan.Pieces[0];
        Near(drawIn, blanket.DrawIn.Value.Value);
        Near(takeUp, blanket.WarpTakeUp.Value.Value);
        double shrinkage = blanket.ShrinkageInLength.Value.Value;
        Assert.InRange(shrinkage, 0.05, 0.10);

        double ends = Math.Round(600 / (1 - shrinkage) / (1 - drawIn) * layer * 2 / 4) * 4;
        Assert.Equal(ends, plan.Pieces[0].Ends.Value.Count);
        double reedWidth = ends / (2 * layer);
        double offLoom = 1500 / (1 - shrinkage);
        double woven = offLoom / (1 - takeUp);
        double warp = 60 + woven + 2 * (80 / 0.85 + 30) + 550;
        Near(warp / 1000, plan.WarpLength.Value.Metres);
        Near(ends * warp / 1000, plan.Yarns[0].Total.Value.Metres, 1e-3);
        double picks = 2 * Math.Ceiling(offLoom * layer);
        Assert.Equal(picks, blanket.Picks.Value.Count);
        Near(1.04 * picks * reedWidth / 1000, plan.Yarns[1].Total.Value.Metres, 1e-3);
        double grams = (ends * woven + picks * reedWidth) / 1000 * tex / 1000;
        double washedWidth = 2 * reedWidth * (1 - drawIn) * (1 - shrinkage);
        Near(washedWidth / 10, blanket.FinishedWidth.Value.Centimetres);
        Near(grams / (washedWidth / 1000 * 1.5), blanket.MassPerArea.Value.GramsPerSquareMetre, 1e-3);
        Assert.Equal(4 * 16 + 3 * 16, (double)plan.Purchase!.Value.Amount);
    }

    // Ashenhurst: threads that lie side by side in an inch are K × √(yards in a pound).
    private static double Thickness(double tex, double k) => Inch / (k * Math.Sqrt(453592.37 / tex / 0.9144));

    // Peirce: p = (l − Dθ) cos θ + D sin θ and h = (l − Dθ) sin θ + D (1 − cos θ) over one crossing; the floats between lie straight.
    private static double TakeUp(double pitch, double both, double height, int ends)
    {
        (double low, double high) = (1e-9, Math.PI / 2);
        double Straight(double angle) => (height - both * (1 - Math.Cos(angle))) / Math.Sin(angle);
        for (int i = 0; i < 200; i++)
        {
            double middle = (low + high) / 2;
            if (Straight(middle) * Math.Cos(middle) + both * Math.Sin(middle) > pitch) low = middle;
            else high = middle;
        }

        double crimp = (Straight(low) + both * low - pitch) / (ends * pitch);
        return crimp / (1 + crimp);
    }

    private static void Near(double byHand, double planned, double close = Close) => Assert.Equal(byHand, planned, close * Math.Abs(byHand));

    private static PlanResult PlanOf(string sample) =>
        WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", sample + ".json"))).Value.Plan().Value;
}
