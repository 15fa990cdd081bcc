using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

public sealed partial record YarnCount
{
    // Systems in which yarn for handweaving is sold plied and labelled with two numbers; silk-english included, for old stock.
    private static readonly ImmutableArray<CountSystem> PliedSystems =
        [CountSystem.Cotton, CountSystem.Worsted, CountSystem.Metric, CountSystem.Linen, CountSystem.SilkEnglish];

    // No yarn for weaving or knitting is finer or thicker; used only to leave out readings.
    private const double FinestTex = 2;
    private const double ThickestTex = 4000;

    // Strands lose up to half their length in crepe and fancy yarns, and gain a little only by error of rounding.
    private const double LeastTakeUp = -0.05;
    private const double MostTakeUp = 0.5;

    /// <summary>Reads a count in a system.</summary>
    /// <param name="text">For example <c>8/2</c>, <c>2/20</c>, <c>2-40's</c>, <c>Nm 28/2</c>, <c>R 60 tex/2</c>, <c>60 tex x 2</c>, <c>1450 yd/lb</c>.</param>
    /// <param name="system">The system in which it is to be read.</param>
    /// <param name="where">Field path for a problem.</param>
    /// <returns>The count, or the problem: text that is no count, that names another system, or that can be read in two ways.</returns>
    public static Parsed<YarnCount> Parse(string text, CountSystem system, string where = "count")
    {
        Parsed<CountWords> read = CountText.Read(text, where);
        return read.TryGet(out CountWords? words) ? Interpret(words, text, system.Definition(), where) : read.Problem!;
    }

    /// <summary>All systems in which a count can sensibly be read: what the number alone leaves open.</summary>
    /// <param name="text">For example <c>8/2</c>.</param>
    /// <returns>One count for each system, those most usual in handweaving first; empty when the text is no count.</returns>
    public static ImmutableArray<YarnCount> Readings(string text)
    {
        if (!CountText.Read(text, "count").TryGet(out CountWords? words)) return [];
        IEnumerable<CountSystem> systems = words.System is { } named ? [named]
            : words.Fold == '\0' ? CountSystems.All.Where(s => s.UsualNumbers is var (low, high) && words.First >= low && words.First <= high).Select(s => s.System)
            : words.IsResultant || words.Fold == 'x' ? PliedSystems.Add(CountSystem.Tex)
            : PliedSystems;
        return
        [
            .. systems
                .Select(s => Interpret(words, text, s.Definition(), "count"))
                .Where(r => r.Succeeded)
                .Select(r => r.Value)
                .Where(c => words.System is not null || c.Tex is >= FinestTex and <= ThickestTex),
        ];
    }

    private static Parsed<YarnCount> Interpret(CountWords words, string text, CountSystemDefinition system, string where)
    {
        string quoted = TextCursor.Quote(text);
        InputProblem Problem(string what, string mend) => new(what, where, mend) { Text = text, Position = 0 };

        if (words.System is { } named && named != system.System)
        {
            string name = named.Definition().Name;
            return Problem($"{quoted} names the system {name}, but {system.Name} was asked for.", $"Leave out one of them, or read it with the system {name}.");
        }

        if (words.Fold != '\0' && system.PlyOrder == PlyOrder.None)
        {
            return Problem($"{quoted} tells strands, but {system.Title} always means the finished yarn.", $"Write the number alone, for example {words.First:0.###} {system.Sign}.");
        }

        if (words.Fold == '/' && system.PlyOrder == PlyOrder.Stated && !words.IsResultant)
        {
            return Problem(
                $"{quoted} in {system.Name} does not say whether {words.First:0.###} is one strand or the finished yarn.",
                $"Write R {words.First:0.###} {system.Sign}/{words.Second:0.###} if the finished yarn has {words.First:0.###}, or {words.First:0.###} {system.Sign} x {words.Second:0.###} if each strand has.");
        }

        if (Split(words, system) is not var (number, plies, remark))
        {
            return Problem($"{quoted} tells no whole number of strands from 1 to {MostPlies}.", "Write the count and the strands, for example 8/2.");
        }

        return Make(words, system, number, plies, remark) is { } count
            ? count
            : Problem(
                words.Other is null ? $"The count {quoted} is out of all bounds in {system.Name}." : $"The single and the finished yarn in {quoted} do not fit together.",
                words.Other is null ? "Write a count that yarns have, for example 8/2." : "Mark the finished yarn with R, for example 34 tex x 2; R 69.3 tex.");
    }

    private static (double Number, int Plies, string? Remark)? Split(CountWords words, CountSystemDefinition system)
    {
        if (words.Fold == '\0') return (words.First, 1, null);
        if (words.FirstMarked && words.SecondMarked) return null;
        if (words.IsResultant || words.Fold == 'x' || words.FirstMarked) return Whole(words.First, words.Second);
        if (words.SecondMarked) return Whole(words.Second, words.First);
        if (CountText.Order(system, words.First, words.Second) is not var (number, plies, reversed)) return null;
        double other = system.TexOf(plies) * number;
        string? remark = reversed
            ? $"Read as {plies} strands of {number:0.###}. {Custom(system)}; read that way it would be {other:0} tex."
            : null;
        return (number, plies, remark);

        static (double, int, string?)? Whole(double number, double plies) =>
            plies is >= 1 and <= MostPlies && plies == Math.Floor(plies) ? (number, (int)plies, null) : null;
    }

    private static string Custom(CountSystemDefinition system) => system.PlyOrder == PlyOrder.PlyFirst
        ? $"By the custom of {system.Name} the strands come first"
        : $"By the custom of {system.Name} the count comes first";

    private static YarnCount? Make(CountWords words, CountSystemDefinition system, double number, int plies, string? remark)
    {
        // R 69.3 tex / 2; 34 tex tells the finished yarn first, 34 tex x 2; R 69.3 tex the single first: the same yarn.
        double single = words is { IsResultant: true, Other: { } after } ? after : number;
        double? resultant = words.Other is null ? null : words.IsResultant ? number : words.Other;
        if (words.Other is not null && words.IsResultant == words.OtherIsResultant) return null;
        CountBasis basis = words.Other is not null || words.Fold == 'x' ? CountBasis.Singles
            : words.IsResultant ? CountBasis.Resultant
            : CustomaryBasis(system);
        var count = new YarnCount(system.System, single, plies, basis, resultant) { Remark = remark };
        if (!double.IsFinite(count.Tex) || count.Tex is < 1e-9 or > 1e9) return null;
        return count.StatedTakeUp is { } takeUp && takeUp.Value is < LeastTakeUp or > MostTakeUp ? null : count;
    }
}
