using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using Clothwright.TestKit;

namespace Clothwright.Core.Tests.Yarns;

public class FibreComparisonTests
{
    private static readonly Derived<LinearDensity> EightTwo = YarnCount.Parse("8/2", CountSystem.Cotton).Value.ToLinearDensity();

    [Fact]
    public void Yarns_of_equal_count_in_bamboo_lyocell_cotton_and_wool_are_told_apart() =>
        Approved.Check(
            string.Join('\n', Compare("cotton", "bamboo-viscose", "lyocell", "wool-worsted").Select(d => (d.Matters ? "* " : "  ") + d.Sentence)) + "\n",
            "eight-two in cotton, bamboo, lyocell and wool.txt");

    [Fact]
    public void Wool_is_thicker_than_cotton_of_the_same_count()
    {
        FibreDifference thickness = Compare("cotton", "wool-worsted").Single(d => d.Topic == FibreTopic.Diameter);
        double wool = ((Derived<Length>)thickness.Value).Value.Millimetres;
        double cotton = ((Derived<Length>)thickness.AgainstValue).Value.Millimetres;
        // d = √(4 T / (1000 π ρ φ)): cotton 147.64 tex at 1.52 × 0.60 g/cm³ is 0.454 mm (general form; packing from memory of handbooks).
        Assert.Equal(0.454, cotton, 3e-4);
        Assert.Equal(Math.Sqrt(1.52 * 0.60 / (1.31 * 0.575)), wool / cotton, 9);
        Assert.True(thickness.Matters);
        Assert.Contains("fewer ends", thickness.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finer_yarn_takes_more_ends_for_the_same_cover() =>
        Assert.Contains("more ends", Compare("wool-woollen", "cotton").Single(d => d.Topic == FibreTopic.Diameter).Sentence, StringComparison.Ordinal);

    [Fact]
    public void Wet_bamboo_is_weaker_than_wet_cotton()
    {
        FibreDifference wet = Compare("cotton", "bamboo-viscose").Single(d => d.Topic == FibreTopic.WetStrength);
        Assert.True(wet.Matters);
        Assert.Contains("more gently when wet", wet.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fibre_does_not_differ_from_itself() => Assert.DoesNotContain(Compare("linen", "linen"), d => d.Matters);

    [Fact]
    public void Every_topic_is_told_for_every_fibre_compared()
    {
        ImmutableArray<FibreDifference> differences = FibreComparison.OfEqualCount(EightTwo, FibreCatalogue.All);
        Assert.Equal((FibreCatalogue.All.Length - 1) * Enum.GetValues<FibreTopic>().Length, differences.Length);
        Assert.All(differences, d => Assert.EndsWith(".", d.Sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void One_fibre_alone_cannot_be_compared() => Assert.Throws<ArgumentException>(() => FibreComparison.OfEqualCount(EightTwo, FibreCatalogue.All[0]));

    private static ImmutableArray<FibreDifference> Compare(params string[] ids) => FibreComparison.OfEqualCount(EightTwo, [.. ids.Select(FibreCatalogue.Get)]);
}
