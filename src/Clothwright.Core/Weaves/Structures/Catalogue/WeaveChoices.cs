using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>What was chosen for the parameters of one weave; what was not chosen has its default.</summary>
internal sealed class WeaveChoices
{
    private readonly WeaveEntry _entry;
    private readonly Dictionary<string, string> _values = new(StringComparer.OrdinalIgnoreCase);

    public WeaveChoices(WeaveEntry entry) => _entry = entry;

    /// <summary>Sets a value; the last one set counts.</summary>
    /// <exception cref="InputProblemException">The weave has no such parameter.</exception>
    public void Set(string name, string value)
    {
        if (!_entry.Parameters.Any(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase)))
        {
            throw new InputProblemException(new InputProblem(
                $"{_entry.Name} has nothing called \"{name}\" to choose.",
                "weave",
                _entry.Parameters.IsEmpty ? "Leave it out." : $"Choose among {string.Join(", ", _entry.Parameters.Select(p => p.Name))}."));
        }

        _values[name] = value.Trim();
    }

    public bool IsGiven(string name) => _values.ContainsKey(name);

    public string Words(string name) => _values.GetValueOrDefault(name) ?? Find(name).Default;

    public int Number(string name) => NumberOrNone(name)
        ?? throw new InputProblemException(new InputProblem($"{_entry.Name} needs {name}.", $"weave.{name}", $"Say {Find(name).Meaning}, for example {Find(name).Least}."));

    public int? NumberOrNone(string name)
    {
        string text = Words(name);
        return text.Length == 0 ? null : Checked(Find(name), text);
    }

    public int[] Numbers(string name)
    {
        WeaveParameter parameter = Find(name);
        return [.. Words(name).Split([' ', ',', '/'], StringSplitOptions.RemoveEmptyEntries).Select(t => Checked(parameter, t))];
    }

    public string Choice(string name)
    {
        string text = Words(name);
        return Find(name).Choices.FirstOrDefault(c => string.Equals(c, text, StringComparison.OrdinalIgnoreCase))
            ?? throw new InputProblemException(new InputProblem(
                $"\"{text}\" is not a choice for {name} of {_entry.Name}.", $"weave.{name}", $"Choose {string.Join(" or ", Find(name).Choices)}."));
    }

    public bool Yes(string name) => Choice(name) == "yes";

    public ThreadOrder Order(string name) => ThreadOrder.Parse(Words(name), $"weave.{name}").Value;

    public Profile Profile(int most) => Structures.Profile.Parse(Words("blocks"), Words("shown"), most).Value;

    public ImmutableArray<BlockRun> Blocks(int most, int usual) => BlockRun.Parse(Words("blocks"), most, usual).Value;

    public ClothSide Edge(string name) => Choice(name) == "left" ? ClothSide.Left : ClothSide.Right;

    public TwillBase Twill(string name) => TwillBase.Parse(Words(name)).Value;

    public Drawdown Cloth(string name)
    {
        string text = Words(name);
        return text.All(c => c is '0' or '1' or '/')
            ? Drawdown.Parse(text, $"weave.{name}").Value
            : WeaveCatalogue.Make(text).Value.Draft.Drawdown();
    }

    public ThreadGroups Groups(string name) => ThreadGroups.Parse(Words(name)).Value;

    private static int Checked(WeaveParameter parameter, string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= parameter.Least && number <= parameter.Most
            ? number
            : throw new InputProblemException(new InputProblem(
                $"\"{text}\" cannot be {parameter.Name}: {parameter.Meaning}.",
                $"weave.{parameter.Name}",
                $"Give a whole number from {parameter.Least} to {parameter.Most}."));

    private WeaveParameter Find(string name) => _entry.Parameters.First(p => p.Name == name);
}
