using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Tests.Weaves.Structures;

/// <summary>What a person can type about a weave, well and badly.</summary>
public class TypedChoicesTests
{
    [Theory]
    [InlineData("overshot blocks A4 B6 size 5", "overshot blocks=a4b6")]
    [InlineData("overshot rose", "overshot fashion=rose")]
    [InlineData("overshot rose-fashion blocks ABCD", "overshot blocks ABCD fashion rose")]
    [InlineData("name draft curlew sands", "name draft name=curlewsands")]
    [InlineData("name draft mirrored no marsh", "name draft marsh mirrored=no")]
    [InlineData("summer and winter blocks ABBA shown A B AB - tie 1 2 2 1", "summer & winter tie 1,2,2,1 blocks ABBA shown A,B,AB,-")]
    [InlineData("colour and weave 2/2 warp 4A 4B weft 2A 2B", "colour-and-weave base=2/2 weft 2a 2b warp 4a 4b")]
    [InlineData("network draft line 1 2 3 4 5 6 7 8 initial 1 2 3 4", "network initial 1,2,3,4 line 1,2,3,4,5,6,7,8")]
    [InlineData("advancing points 2/2 run 3", "advancing twill form point run 3 base 2/2")]
    [InlineData("advancing 2/2 twill as drawn in", "advancing 2/2 twill treadling as drawn in")]
    [InlineData("double width fold left", "double width left")]
    [InlineData("monk’s belt ends 6 4 picks 3", "monks belt 3 picks ends 6 4")]
    [InlineData("basket ends 3/3 picks 2/2", "basket weave picks=2/2 ends=3/3")]
    [InlineData("(Shadow weave, on 8 shafts)", "shadow weave shafts 8")]
    public void Two_ways_of_saying_it_make_one_weave(string one, string other)
    {
        Weave first = WeaveCatalogue.Make(one).Value;
        Weave second = WeaveCatalogue.Make(other).Value;

        Assert.Equal(first.Draft, second.Draft);
    }

    [Theory]
    [InlineData("overshot blocks AAAA", "blocks", "ABCD")]
    [InlineData("overshot blocks AE", "blocks", "A to D")]
    [InlineData("overshot blocks A4000", "blocks", "1 to 1000")]
    [InlineData("crackle blocks A1000 B1000 C1000 D1000 A1000 B1000", "blocks", "5000")]
    [InlineData("crackle blocks A1000 B1000 picks 16", "picks", "picks")]
    [InlineData("crackle picks 17", "weave.picks", "1 to 16")]
    [InlineData("crackle blocks", "weave", "blocks")]
    [InlineData("summer and winter shown A1", "shown", "A B AB -")]
    [InlineData("summer and winter tie 3", "weave.tie", "1 to 2")]
    [InlineData("summer and winter blocks A1000 A1000 B2", "blocks", "2000")]
    [InlineData("tied weave ties 2 tie 3", "tie", "1 to 2")]
    [InlineData("turned satin 6 ends", "step", "1")]
    [InlineData("turned satin 8 ends step 2", "step", "3, 5")]
    [InlineData("monk's belt ends 5 6", "ends", "even")]
    [InlineData("m's and o's cord 5", "cord", "even")]
    [InlineData("huck half 4", "half", "odd")]
    [InlineData("huck floats sideways", "weave.floats", "both or warp or weft")]
    [InlineData("shadow weave 5 shafts", "shafts", "even")]
    [InlineData("deflected double weave group 3", "group", "even")]
    [InlineData("supplementary weft group 3", "group", "even")]
    [InlineData("log cabin block 1", "weave.block", "2 to 200")]
    [InlineData("network draft initial 1 2 3", "shafts", "multiple of 3")]
    [InlineData("advancing 3/3 twill run 2 advance 3", "run", "3 or more")]
    [InlineData("undulating twill ends 1 0 1 0", "ends", "each shaft")]
    [InlineData("undulating twill ends 0 0", "ends", "0 to 8")]
    [InlineData("herringbone 2/1", "base", "even number")]
    [InlineData("irregular satin order 1 2 3 4 5", "order", "apart")]
    [InlineData("irregular satin order 1 3 5 2 2", "order", "each end once")]
    [InlineData("colour and weave warp 4A 4!", "weave", "choose")]
    [InlineData("colour and weave warp 0A", "weave.warp", "4A 4B")]
    [InlineData("name draft name 123", "name", "MARSH")]
    [InlineData("basket ends 2/x", "groups", "2/2")]
    [InlineData("basket 40/2", "groups", "1 to 32")]
    [InlineData("twill 40/40", "base", "64")]
    [InlineData("twill a/b", "base", "2/2")]
    [InlineData("", "weave", "2/2 twill")]
    [InlineData("   ", "weave", "2/2 twill")]
    [InlineData("==", "weave", "trade name")]
    public void Bad_choices_name_the_place_and_the_mend(string words, string where, string mend)
    {
        InputProblem problem = WeaveCatalogue.Make(words).Problem!;

        Assert.Equal(where, problem.Where);
        Assert.Contains(mend, problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_beyond_measure_is_refused_at_once() =>
        Assert.Contains("1000000 characters", WeaveCatalogue.Make(new string('x', 1_000_000)).Problem!.What, StringComparison.Ordinal);

    [Fact]
    public void Parameters_that_a_weave_does_not_have_are_refused_with_those_it_has()
    {
        InputProblem problem = WeaveCatalogue.Make("satin", null, new Dictionary<string, string> { ["sheen"] = "high" }).Problem!;

        Assert.Contains("sheen", problem.What, StringComparison.Ordinal);
        Assert.Contains("ends, step, face", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_choice_of_every_weave_is_accepted_and_its_default_is_within_its_limits()
    {
        foreach (WeaveEntry entry in WeaveCatalogue.All)
        {
            Assert.NotEqual("", entry.InShort);
            Assert.NotEqual("", entry.Family);
            foreach (WeaveParameter parameter in entry.Parameters)
            {
                Assert.NotEqual("", parameter.Meaning);
                string[] values = parameter.Kind == WeaveParameterKind.Choice ? [.. parameter.Choices] : parameter.Default.Length > 0 ? [parameter.Default] : [];
                foreach (string value in values)
                {
                    Parsed<Weave> made = WeaveCatalogue.Make(entry.Name, null, new Dictionary<string, string> { [parameter.Name] = value });
                    Assert.True(made.Succeeded, $"{entry.Name} {parameter.Name}={value}: {made.Problem}");
                }
            }
        }
    }

    [Fact]
    public void Numbers_outside_their_limits_are_refused_for_every_weave()
    {
        foreach (WeaveEntry entry in WeaveCatalogue.All)
        {
            foreach (WeaveParameter parameter in entry.Parameters.Where(p => p.Kind == WeaveParameterKind.Number))
            {
                foreach (string value in new[] { $"{parameter.Least - 1}", $"{parameter.Most + 1}", "many", "99999999999999999999" })
                {
                    Assert.Equal($"weave.{parameter.Name}", WeaveCatalogue.Make(entry.Name, null, new Dictionary<string, string> { [parameter.Name] = value }).Problem?.Where);
                }
            }
        }
    }
}
