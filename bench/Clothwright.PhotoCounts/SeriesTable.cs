using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.TestKit.Photographs;

namespace Clothwright.PhotoCounts;

/// <summary>Counts in a series of synthetic photographs and prints how many come out right, and how sure they were.</summary>
internal static class SeriesTable
{
    private const double Right = 0.02;
    private const double Wrong = 0.05;

    public static void Print(Func<int, SyntheticSwatch> series, int count)
    {
        var sets = new (Certainty Certainty, double Off, string Name, bool RightIsAsked, string Asked)[2 * count];
        Parallel.For(0, count, number =>
        {
            SyntheticSwatch swatch = series(number);
            Photograph photograph = Photograph.FromRgba(swatch.Side, swatch.Side, SwatchPainter.Rgba(swatch));
            PhotoScale scale = PhotoScale.FromLength(Length.FromMillimetres(50), 50 * swatch.PixelsPerMillimetre);
            ClothCount found = ClothCounter.Count(photograph, scale, PhotoArea.MiddleOf(photograph), CountDetail.Full).Value;
            sets[2 * number] = Set(found.Ends, swatch.EndsPerCentimetre, $"{swatch.Name}, ends");
            sets[2 * number + 1] = Set(found.Picks, swatch.PicksPerCentimetre, $"{swatch.Name}, picks");
        });

        int both = Enumerable.Range(0, count).Count(i => Math.Abs(sets[2 * i].Off) <= Right && Math.Abs(sets[2 * i + 1].Off) <= Right);
        Console.WriteLine($"{count} photographs, {sets.Length} sets of threads; {sets.Count(s => Math.Abs(s.Off) <= Right)} sets within 2 %, both sets in {both} photographs.");
        Console.WriteLine($"Of the {sets.Count(s => Math.Abs(s.Off) > Right)} others {sets.Count(s => Math.Abs(s.Off) > Right && s.RightIsAsked)} ask for the right count.");
        Console.WriteLine("| answer | sets | within 2 % | more than 5 % off |\n|---|---|---|---|");
        foreach (Certainty certainty in Enum.GetValues<Certainty>().Reverse())
        {
            var some = sets.Where(s => s.Certainty == certainty).ToArray();
            Console.WriteLine($"| {certainty} | {some.Length} | {some.Count(s => Math.Abs(s.Off) <= Right)} | {some.Count(s => Math.Abs(s.Off) > Wrong)} |");
        }

        foreach (var set in sets.Where(s => Math.Abs(s.Off) > Right)) Console.WriteLine($"{set.Certainty}, {set.Off * 100:0.0} %: {set.Name}; asks {set.Asked}{(set.RightIsAsked ? ", the right count among it" : "")}");
    }

    private static (Certainty Certainty, double Off, string Name, bool RightIsAsked, string Asked) Set(ThreadSetCount found, double truth, string name) => (
        found.Certainty,
        found.Sett.Value.PerCentimetre / truth - 1,
        name,
        found.Questions.Any(q => q.Instead is { } instead && Math.Abs(instead.PerCentimetre / truth - 1) <= Right),
        string.Join(", ", found.Questions.Select(q => q.Kind)));
}
