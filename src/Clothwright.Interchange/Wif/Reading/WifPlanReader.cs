using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Interchange.Wif;

/// <summary>Reads threading, tie-up, treadling and lift plan: numbered lists of shafts or treadles.</summary>
internal sealed class WifPlanReader(WifSections sections, WifNumberedReader numbered)
{
    /// <summary>Reads one plan.</summary>
    /// <param name="name">The section.</param>
    /// <param name="lines">What its lines are, and how many are declared.</param>
    /// <param name="members">What its lists hold, and how many are declared; raised if the lists hold more.</param>
    public WifNumbered<ShaftSet>? Read(string name, WifTally lines, WifTally members)
    {
        WifNumbered<ShaftSet>? plan = numbered.Read<ShaftSet>(
            name,
            1,
            int.MaxValue,
            (string section, WifEntry entry, ReadOnlySpan<char> value, out ShaftSet made) =>
            {
                WifNumbers.TryWhole(entry.Key(sections.Text), out int number);
                Take(lines, number, section, entry);
                made = List(section, entry, value, members);
                return true;
            });
        TellBeyond(name, lines);
        TellBeyond(name, members);
        return plan is null ? null : WifNumbered.Of<ShaftSet>(plan.Where(line => line.Value != ShaftSet.None));
    }

    private ShaftSet List(string section, WifEntry entry, ReadOnlySpan<char> value, WifTally members)
    {
        ReadOnlySpan<char> plain = WifNumbers.WithoutComment(value);
        ulong bits = 0;
        foreach (Range range in plain.SplitAny(", \t"))
        {
            ReadOnlySpan<char> word = plain[range].Trim();
            if (word.IsEmpty) continue;
            if (!WifNumbers.TryWhole(word, out int number) || number < 0)
            {
                numbered.Warn(section, entry, $"\"{WifSections.Shortened(word)}\" is not a {members.Thing}; it is left out.");
                continue;
            }

            if (number == 0) continue;
            Take(members, number, section, entry);
            bits |= 1UL << (number - 1);
        }

        return new ShaftSet(bits);
    }

    private void Take(WifTally tally, int number, string section, WifEntry entry)
    {
        if (number > tally.Most)
        {
            throw new InputProblemException(new InputProblem(
                $"The file uses {tally.Thing} {number}; at most {tally.Most} are read.",
                $"line {entry.Line}, [{section}] {WifSections.Shortened(entry.Key(sections.Text))}",
                $"Take the line out, or number the {tally.Thing}s without gaps from 1, for example 1 to 4."));
        }

        tally.Take(number, entry);
    }

    private void TellBeyond(string section, WifTally tally)
    {
        if (tally.TakeNews() is not { } first) return;
        numbered.Warn(section, first, tally.Declared is { } declared
            ? $"The file declares {declared} {tally.Thing}s, but {tally.Thing} {tally.Used} is used; {tally.Used} are taken."
            : $"The file does not say how many {tally.Thing}s there are; {tally.Used} are taken.");
    }
}
