using System.Globalization;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Colours;
using Clothwright.Core.Colours.Stripes;

namespace Clothwright.Published.Tests.Colours;

/// <summary>Wefts for a face, what eyes notice, stripes and words for colours, by the table.</summary>
public class ColourWorkTableTests
{
    private const string Table = "Tables/colour-work.md";

    public static TheoryData<string> Wefts() => CheckRow.Ids(Table, "N");

    public static TheoryData<string> Notices() => CheckRow.Ids(Table, "J");

    public static TheoryData<string> Stripes() => CheckRow.Ids(Table, "Q");

    public static TheoryData<string> Words() => CheckRow.Ids(Table, "K");

    [Theory]
    [MemberData(nameof(Wefts))]
    public void The_weft_for_a_wanted_face_is_the_light_that_is_left(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        LinearColour weft = WeftForFace.Light(Light(row.Text("face")), Light(row.Text("warp")), row["share"]);
        double[] parts = [weft.Red, weft.Green, weft.Blue];
        Assert.All(parts.Select((p, i) => (Part: p, Expected: row.Expected[i])), p => Assert.Equal(double.Parse(p.Expected, CultureInfo.InvariantCulture), p.Part, 0.0001));
        Assert.Equal(row.Expected[3], WeftForFace.IsReachable(weft) ? weft.ToSrgb().ToString() : "–");
    }

    [Theory]
    [MemberData(nameof(Notices))]
    public void Half_of_all_people_notice_the_published_difference(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        NoticedDifference noticed = NoticedDifference.Of(row["degrees"]);
        row.Check([noticed.L, noticed.A, noticed.B]);
    }

    [Theory]
    [MemberData(nameof(Stripes))]
    public void Stripes_fall_as_the_rule_says(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        string[] made = row.TextOrNull("seed") is not null ? Lot((ulong)row["seed"], row.Expected.Length)
            : row.TextOrNull("weights") is { } weights ? [.. StripeWidths.Shared([.. weights.Split(',').Select(w => double.Parse(w, CultureInfo.InvariantCulture))], (int)row["threads"]).Select(w => $"{w}")]
            : [string.Concat(ThreadGradient.Between((int)row["threads"]).Select(second => second ? 'B' : 'A'))];
        Assert.Equal(row.Expected, made);
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void A_colour_goes_by_the_word_that_people_have_for_it(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        Assert.EndsWith(row.Expected[0], ColourWords.Of(Light(row.Text("colour"))), StringComparison.Ordinal);
    }

    private static string[] Lot(ulong seed, int count)
    {
        var lot = new SplitMix64(seed);
        return [.. Enumerable.Range(0, count).Select(_ => lot.Next().ToString("x16", CultureInfo.InvariantCulture))];
    }

    private static LinearColour Light(string colour) => LinearColour.From(SrgbColour.Parse(colour).Value);
}
