using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Csv;

/// <summary>The rows of one part of a draft's table, in any order.</summary>
internal sealed class DraftTableList(string part, int mostRows, int highestMember)
{
    private readonly Dictionary<int, ShaftSet> _sets = [];
    private readonly Dictionary<int, SrgbColour> _colours = [];
    private readonly Dictionary<int, Length> _spacings = [];
    private readonly Dictionary<int, Length> _thicknesses = [];

    /// <summary>The highest number of a row.</summary>
    public int Count { get; private set; }

    public int HighestMember { get; private set; }

    public void Take(CsvCells row)
    {
        int number = row.Whole(DraftTable.Number, 1, mostRows)
            ?? throw row.Problem(DraftTable.Number, $"This {part} has no number.", "Number the rows of a part from 1.");
        if (!_sets.TryAdd(number, Members(row))) throw row.Problem(DraftTable.Number, $"There are two rows for {part} {number}.", "Take one of them out, or number it anew.");
        Count = Math.Max(Count, number);
        if (row.Text(DraftTable.Colour) is { Length: > 0 } colour) _colours.Add(number, Colour(row, colour));
        if (row.Measure(DraftTable.Spacing) is { } spacing) _spacings.Add(number, Length.FromMillimetres(spacing));
        if (row.Measure(DraftTable.Thickness) is { } thickness) _thicknesses.Add(number, Length.FromMillimetres(thickness));
    }

    public ImmutableArray<ShaftSet> Sets() => Dense(_sets, ShaftSet.None);

    public WovenThreads Threads() => new()
    {
        Colours = Dense(_colours, WifConversion.Undyed),
        Spacings = Dense(_spacings, Length.Zero),
        Thicknesses = Dense(_thicknesses, Length.Zero),
    };

    private ImmutableArray<T> Dense<T>(Dictionary<int, T> rows, T missing) =>
        rows.Count == 0 ? [] : [.. Enumerable.Range(1, Count).Select(number => rows.GetValueOrDefault(number, missing))];

    private static SrgbColour Colour(CsvCells row, string text)
    {
        Parsed<SrgbColour> colour = SrgbColour.Parse(text);
        return colour.Problem is { } problem ? throw row.Problem(DraftTable.Colour, problem.What, problem.Mend) : colour.Value;
    }

    private ShaftSet Members(CsvCells row)
    {
        ulong bits = 0;
        foreach (string word in row.Text(DraftTable.Value).Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int member) || member < 1 || member > highestMember)
            {
                throw row.Problem(DraftTable.Value, $"\"{word}\" is not a number from 1 to {highestMember}.", "Write shafts or treadles with blanks between, for example 1 3.");
            }

            bits |= 1UL << (member - 1);
            HighestMember = Math.Max(HighestMember, member);
        }

        return new ShaftSet(bits);
    }
}
