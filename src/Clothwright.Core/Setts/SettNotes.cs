using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Setts;

/// <summary>What a weaver should be told beside the numbers.</summary>
internal static class SettNotes
{
    // A quarter more or less than the mean shows as crowding or gaps in the reed.
    private const double Uneven = 1.25;

    internal static ImmutableArray<string> On(SettAdvice advice)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        SettQuestion question = advice.Question;
        if (!advice.Counts.EveryThreadInterlaces)
        {
            notes.Add($"{advice.Counts.IdleEnds.Length} ends and {advice.Counts.IdlePicks.Length} picks never change face: they are loose or belong to another layer. Mend the draft, or set each layer by its own weave.");
        }

        if (advice.TightestPick.Limit.Value < advice.Ends.Value)
        {
            notes.Add($"Pick {advice.TightestPick.Thread + 1} interlaces more than the mean: beside it ends fit only to {advice.TightestPick.Limit.Value}. Expect it to push the ends apart or to stand up.");
        }

        if (advice.TightestEnd.Limit.Value < advice.Picks.Value)
        {
            notes.Add($"End {advice.TightestEnd.Thread + 1} interlaces more than the mean: it takes up faster than its neighbours and may want its own tension.");
        }

        foreach (Yarn yarn in question.Warp.Yarns.Concat(question.Weft.Yarns).DistinctBy(y => y.Id)) AddYarn(notes, yarn);
        AddUneven(notes, question.Warp, advice.WarpDiameter.Value);
        if (question.Purpose == ClothPurpose.WeftFaced) notes.Add("The weft must be able to slide down between the ends: never set closer than warp and weft diameters side by side.");
        if (question.Layers > 1) notes.Add($"{question.Layers} layers share the reed: sett and picks are those of one layer, the reed carries {question.Layers} times as many ends.");
        return notes.ToImmutable();
    }

    private static void AddYarn(ImmutableArray<string>.Builder notes, Yarn yarn)
    {
        if (yarn.MeasuredWraps is null && AshenhurstK.ShouldBeMeasured(yarn.Construction))
        {
            notes.Add($"{yarn.Name}: no rule foretells how thick {Build(yarn.Construction)} is; wrap it round a ruler and enter the wraps.");
        }

        if (yarn.Construction == YarnConstruction.Chenille)
        {
            notes.Add($"{yarn.Name}: set chenille close enough to hold its pile, or loops worm out of the cloth.");
        }

        if (yarn.Construction == YarnConstruction.Monofilament)
        {
            notes.Add($"{yarn.Name}: warp a single filament only together with another yarn in the same heddle and dent; it has no stretch of its own.");
        }
    }

    private static void AddUneven(ImmutableArray<string>.Builder notes, ThreadSystem warp, Length mean)
    {
        if (warp.IsOneYarn) return;
        foreach (int used in warp.Order.Repeat.Distinct().Order())
        {
            Yarn yarn = warp.Yarns[used];
            double ratio = YarnDiameter.Of(yarn).Value / mean;
            string times = ratio.ToString("0.0#", CultureInfo.InvariantCulture);
            if (ratio > Uneven) notes.Add($"{yarn.Name} is {times} times as thick as the mean end: sley it one to a dent, and leave the next dent empty where it still crowds.");
            else if (ratio < 1 / Uneven) notes.Add($"{yarn.Name} is {times} times as thick as the mean end: sley it double, or two to a dent, where single ends would gape.");
        }
    }

    private static string Build(YarnConstruction construction) => construction switch
    {
        YarnConstruction.Chenille => "chenille",
        YarnConstruction.Ribbon => "ribbon",
        YarnConstruction.Soft => "a softly spun knitting yarn",
        _ => "a looped yarn",
    };
}
