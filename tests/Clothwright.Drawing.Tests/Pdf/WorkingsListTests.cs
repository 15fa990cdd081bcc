using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Drawing.Pdf;
using CsCheck;

namespace Clothwright.Drawing.Tests.Pdf;

public class WorkingsListTests
{
    private static readonly Rule Doubled = new("doubling", "twice the length", Source.Published("a handbook"));

    private static Derived<Length> Twice(string label, Derived<Length> of) => Derived.From<Length>(label, Doubled, of, l => 2 * l);

    private static Derived<Length> Waste => Derived.Decision("loom waste", Length.FromCentimetres(60));

    private static WorkingsEntry[] Entries(WorkingsList list) => [.. list.Groups.SelectMany(g => g.Entries)];

    [Fact]
    public void What_was_decided_stands_where_it_is_used()
    {
        var list = WorkingsList.Of(new WorkingsBlock([new("Warp", [Twice("warp", Waste).Working])]));

        WorkingsEntry only = Assert.Single(Entries(list));
        Assert.Equal("warp = 120.0 cm (47.24 in).", only.Equation);
        Assert.Equal("Doubling: twice the length. Source: a handbook. From decided: loom waste 60.0 cm.", only.How);
        Assert.Empty(list.Rules);
    }

    [Fact]
    public void A_rule_of_several_figures_is_written_once_and_named_by_number()
    {
        Derived<Length> two = Twice("two wastes", Waste);
        var list = WorkingsList.Of(new WorkingsBlock([new("Warp", [Twice("four wastes", two).Working])]));

        Assert.Equal(["R1 from 2.", "R1 from decided: loom waste 60.0 cm."], Entries(list).Select(e => e.How));
        Assert.Equal(("R1", "Doubling: twice the length. Source: a handbook."), Assert.Single(list.Rules));
        Assert.Equal([true, false], Entries(list).Select(e => e.IsFigure));
    }

    [Fact]
    public void A_figure_of_another_group_is_worked_there_and_named_by_number()
    {
        Derived<Length> two = Twice("two wastes", Waste);
        Derived<Length> four = Twice("four wastes", two);
        var list = WorkingsList.Of(new WorkingsBlock([new("Warp", [four.Working]), new("Scarf", [two.Working, four.Working])]));

        Assert.Equal(["four wastes = 240.0 cm (94.49 in)."], list.Groups[0].Entries.Select(e => e.Equation));
        Assert.Equal(["two wastes = 120.0 cm (47.24 in)."], list.Groups[1].Entries.Select(e => e.Equation));
        Assert.Equal("four wastes 240.0 cm, see 1", Assert.Single(list.Groups[1].Elsewhere));
    }

    [Fact]
    public void A_range_says_its_unit_once_and_nothing_if_both_ends_read_alike()
    {
        Derived<Length> wide = Derived.FromRange("wide", Length.FromCentimetres(100), Length.FromCentimetres(110), Source.CommonPractice);
        Derived<Length> narrow = Derived.FromRange("narrow", Length.FromCentimetres(100), Length.FromCentimetres(100.01), Source.CommonPractice);
        WorkingsEntry[] entries = Entries(WorkingsList.Of(new WorkingsBlock([new("Lengths", [wide.Working, narrow.Working])])));

        // A range of equal chance from 100 to 110 cm: 105 cm, standard deviation 10 ÷ √12 = 2.887 cm, nine in ten within 1.645 of it.
        Assert.Equal("wide = 105.0 cm (41.34 in), 100.3 to 109.7 cm.", entries[0].Equation);
        Assert.Equal("narrow = 100.0 cm (39.37 in).", entries[1].Equation);
        Assert.EndsWith("Common practice, no source.", entries[0].How, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_that_went_into_a_figure_is_left_out_and_nothing_is_told_twice()
    {
        Gen.Select(Gen.Int[1, 12], Gen.Int[0, 1000]).Sample((count, seed) =>
        {
            var random = new Random(seed);
            var made = new List<Derived<Length>> { Waste };
            for (int i = 0; i < count; i++) made.Add(Twice($"length {i}", made[random.Next(made.Count)]));
            Working[] figures = [.. made.Skip(1).Where(_ => random.Next(2) == 0).Select(m => m.Working)];
            var list = WorkingsList.Of(new WorkingsBlock([new("Figures", [.. figures])]));
            WorkingsEntry[] entries = Entries(list);
            string all = string.Join('\n', entries.Select(e => $"{e.Number} {e.Equation} {e.How}"));

            Assert.Equal(Enumerable.Range(1, entries.Length), entries.Select(e => e.Number));
            foreach (Working working in figures.SelectMany(Tree).Distinct())
            {
                string value = $"{working.Label} {(working.Inputs.IsEmpty ? "" : "= ")}{working.Format(UnitStyle.Metric)}";
                Assert.Contains(value, all, StringComparison.Ordinal);
                if (!working.Inputs.IsEmpty) Assert.Single(entries, e => e.Equation.StartsWith($"{working.Label} = ", StringComparison.Ordinal));
            }

            string rules = string.Join('\n', list.Rules.Select(r => r.Text)) + all;
            if (entries.Length > 0) Assert.Equal(2, rules.Split(Doubled.Formula).Length);
        });
    }

    private static IEnumerable<Working> Tree(Working working) => working.Inputs.SelectMany(Tree).Append(working);
}
