using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Colours.Stripes;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright colour stripes</c>: an order of yarns for a warp or a weft.</summary>
internal sealed class ColourStripesCommand : ReportCommand
{
    private readonly Argument<string> _manner = new("manner") { Description = "gradient (each yarn passes into the next), summing (each stripe as wide as the two before), even, or lot (widths by lot)." };
    private readonly Option<int> _threads = new("--threads") { Description = "Ends or picks to fill.", DefaultValueFactory = _ => 120 };
    private readonly Option<int> _yarns = new("--yarns") { Description = "How many yarns take turns.", DefaultValueFactory = _ => 2 };
    private readonly Option<int> _stripes = new("--stripes") { Description = "How many stripes, for summing and even.", DefaultValueFactory = _ => 6 };
    private readonly Option<int> _least = new("--least") { Description = "Narrowest stripe, for lot.", DefaultValueFactory = _ => 2 };
    private readonly Option<int> _widest = new("--widest") { Description = "Widest stripe, for lot.", DefaultValueFactory = _ => 16 };
    private readonly Option<ulong> _seed = new("--seed") { Description = "The lot; the same number gives the same stripes.", DefaultValueFactory = _ => 1UL };
    private readonly Option<bool> _mirrored = new("--mirrored") { Description = "Go back from the widest stripe, for summing." };

    /// <summary>The command.</summary>
    public ColourStripesCommand()
        : base("stripes", "An order of yarns for a warp or a weft: a passage, a series, or by lot.")
    {
        Arguments.Add(_manner);
        foreach (Option option in new Option[] { _threads, _yarns, _stripes, _least, _widest, _seed, _mirrored }) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        int threads = Within(input, _threads, 1, 100_000);
        int yarns = Within(input, _yarns, 2, 26);
        string manner = input.GetValue(_manner)!.Trim().ToLowerInvariant();
        var wish = new StripeOrder(Manner(manner), yarns, threads) { Mirrored = input.GetValue(_mirrored), Seed = input.GetValue(_seed) };
        ImmutableArray<int> order = (wish.Manner switch
        {
            StripeManner.Summing => wish with { Stripes = Within(input, _stripes, 1, 80) },
            StripeManner.Even => wish with { Stripes = Within(input, _stripes, 1, 10_000) },
            StripeManner.Lot => wish with { Least = Within(input, _least, 1, threads), Widest = Within(input, _widest, input.GetValue(_least), 100_000) },
            _ => wish,
        }).Laid();
        string written = ThreadOrder.Of([.. order]).ToString();
        var json = new JsonObject
        {
            ["order"] = written,
            ["threads"] = threads,
            ["counts"] = new JsonArray([.. Enumerable.Range(0, yarns).Select(y => (JsonNode)order.Count(o => o == y))]),
        };
        if (manner == "lot") json["seed"] = input.GetValue(_seed).ToString(CultureInfo.InvariantCulture);
        return new Report($"{written}\n{string.Join(", ", Enumerable.Range(0, yarns).Select(y => $"{order.Count(o => o == y)} of {ThreadOrder.YarnName(y)}"))}.", json);
    }

    private static StripeManner Manner(string word) => word switch
    {
        "gradient" => StripeManner.Passage,
        "summing" => StripeManner.Summing,
        "even" => StripeManner.Even,
        "lot" => StripeManner.Lot,
        _ => throw new InputProblemException(new InputProblem($"\"{word}\" is no manner of striping.", "manner", "Write gradient, summing, even or lot.")),
    };

    private static int Within(ParseResult input, Option<int> option, int least, int most)
    {
        int value = input.GetValue(option);
        return value >= least && value <= most
            ? value
            : throw new InputProblemException(new InputProblem($"{value} cannot be used.", option.Name, $"Give a whole number from {least} to {most}."));
    }
}
