using System.Collections.Immutable;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>What slips look like, and what slips explain a cloth, by the table.</summary>
public class FaultsTests
{
    public static TheoryData<string, string, string> Rows(string prefix)
    {
        var data = new TheoryData<string, string, string>();
        foreach (var row in MarkdownTable.Load("Tables/faults.md").Rows.Where(r => r["id"].StartsWith(prefix, StringComparison.Ordinal)))
        {
            data.Add(row["id"], row["inputs"], row["expected"]);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Rows), "fault-")]
    public void A_slip_looks_as_published(string id, string inputs, string expected)
    {
        string[] parts = inputs.Split(';', StringSplitOptions.TrimEntries);
        Draft draft = DraftOf(parts[0]);
        SlipEffect effect = (parts.Length == 1 ? new MissedDent(0) : SlipOf(parts[1])).Effect(draft);
        foreach (string part in expected.Split(';', StringSplitOptions.TrimEntries))
        {
            string[] words = part.Split(' ');
            int[] numbers = [.. words.Where(w => char.IsDigit(w[0])).Select(int.Parse)];
            switch (words[^1], words[0])
            {
                case ("cells", _): Assert.True(numbers[0] == effect.Changed.Length, $"{id}: {effect.Changed.Length} cells"); break;
                case (_, "floats"): Assert.Equal(new LongestFloats(numbers[0], numbers[1], numbers[2], numbers[3]), effect.After); break;
                case (_, "picks"): Assert.Equal(numbers, effect.Changed.Select(c => c.Pick + 1).Distinct().Order()); break;
                case (_, "ends"): Assert.Equal(numbers, effect.Changed.Select(c => c.End + 1).Distinct().Order()); break;
                case (_, "same"): Assert.True(effect.Cloth.Row(numbers[0] - 1).SequenceEqual(effect.Cloth.Row(numbers[1] - 1))); break;
                default: Assert.Fail($"{id}: \"{part}\" is not understood."); break;
            }
        }
    }

    [Theory]
    [MemberData(nameof(Rows), "reading-")]
    public void A_cloth_is_read_as_published(string id, string inputs, string expected)
    {
        string[] parts = inputs.Split(';', StringSplitOptions.TrimEntries);
        string[] rows = parts[1].Split('/');
        Drawdown seen = Drawdown.From(rows[0].Length, rows.Length, (pick, end) => rows[pick][end] == '1');
        FaultReport report = FaultFinder.Find(DraftOf(parts[0]), seen);
        Assert.True(report.Proved, id);
        Slip[][] readings = [.. expected.Split(',', StringSplitOptions.TrimEntries).Select(r => r.Split('+', StringSplitOptions.TrimEntries).Select(SlipOf).ToArray())];
        Assert.Equal(readings.Length, report.Readings.Length);
        Assert.All(readings, r => Assert.Contains(report.Readings, found => found.Slips.ToHashSet().SetEquals(r)));
    }

    private static Draft DraftOf(string name)
    {
        string[] words = name.Split(' ');
        int size = words.Length > 1 ? int.Parse(words[1]) : 4;
        (string threading, string[] tieUp) = words[0] switch
        {
            "twill" => ("1234", new[] { "12", "23", "34", "14" }),
            "plain4" => ("1234", ["13", "24"]),
            "plain" => ("12", ["1", "2"]),
            _ => throw new InvalidDataException($"No draft is called {name}."),
        };
        return new Draft
        {
            Shafts = threading.Length,
            Threading = [.. Enumerable.Range(0, size).Select(e => Set(threading[e % threading.Length].ToString()))],
            TieUp = [.. tieUp.Select(Set)],
            Treadling = [.. Enumerable.Range(0, size).Select(p => ShaftSet.Of(p % tieUp.Length + 1))],
        };
    }

    private static ShaftSet Set(string digits) => ShaftSet.Of([.. digits.Select(c => c - '0')]);

    private static Slip SlipOf(string text)
    {
        string[] words = text.Split(' ');
        int number = int.Parse(words[1]);
        return (words[0], words[2]) switch
        {
            ("end", "on") => new WrongHeddle(number - 1, Set(words[3])),
            ("ends", _) => new CrossedEnds(number - 1),
            ("pick", "on") => new WrongTreadle(number - 1, Set(words[3])),
            ("pick", "left") => new PickLeftOut(number - 1),
            ("pick", "doubled") => new PickDoubled(number - 1),
            ("treadle", _) => new WrongTie(number, int.Parse(words[3])),
            _ => throw new InvalidDataException($"\"{text}\" is not a slip."),
        };
    }
}
