using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>How far yarns as sold stray from what their count or label says.</summary>
internal static class CountTolerance
{
    // Linen and cottolin: trade grists 5 to 13 % from the lea rule are in print (16/2 linen 2,700 against 2,400 yd/lb), so 6 % of one deviation.
    private const double LinenDeviation = 0.06;
    private const double CountDeviation = 0.03;
    private const double LabelDeviation = 0.02;

    private static readonly Source Lea = Source.Published("trade grists of linen and cottolin against the lea rule, a weaving magazine's answer column");

    /// <summary>A factor about 1 for a count.</summary>
    public static Derived<Ratio> Of(YarnCount count) => count.System is CountSystem.Linen
        ? Factor(count.ToString(), LinenDeviation, Lea)
        : Factor(count.ToString(), CountDeviation, Source.CommonPractice);

    /// <summary>A factor about 1 for a printed length and mass.</summary>
    public static Derived<Ratio> OfLabel(string label) => Factor(label, LabelDeviation, Source.CommonPractice);

    private static Derived<Ratio> Factor(string name, double deviation, Source source) =>
        Derived.Given("true to count", Ratio.FromValue(1), source, deviation, $"how true {name} is to its count", "1, yarn as sold strays about its count");
}
