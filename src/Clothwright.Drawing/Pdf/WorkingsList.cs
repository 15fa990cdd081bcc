using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Wordings;
using Clothwright.Core.Workings;

namespace Clothwright.Drawing.Pdf;

/// <summary>
/// The trees of workings as a list in which each is told once under a number: what went into it is named by number, what was decided
/// by its value, and a rule that makes several figures is written out once, with its source, at the end.
/// </summary>
internal sealed class WorkingsList
{
    private readonly WorkingsIdentity _identity = new();
    private readonly Dictionary<int, int> _numbers = [];
    private readonly Dictionary<Rule, int> _uses = [];
    private readonly Dictionary<Rule, int> _rules = [];

    private readonly Wording _wording;

    private WorkingsList(Wording wording) => _wording = wording;

    /// <summary>The groups in reading order.</summary>
    public ImmutableArray<WorkingsGroupEntries> Groups { get; private set; } = [];

    /// <summary>The rules that make more than one figure, with their numbers.</summary>
    public ImmutableArray<(string Number, string Text)> Rules { get; private set; } = [];

    /// <summary>Makes the list.</summary>
    /// <param name="block">The workings.</param>
    /// <param name="wording">The language; English if left out.</param>
    public static WorkingsList Of(WorkingsBlock block, Wording? wording = null)
    {
        var list = new WorkingsList(wording ?? Wording.English);
        HashSet<int> figures = [.. block.Workings.Select(list._identity.NumberOf)];
        var order = block.Groups.Select(g => (Group: g, Workings: list.Order(g, figures))).ToList();
        foreach (Working working in order.SelectMany(o => o.Workings).Where(w => !w.Inputs.IsEmpty))
        {
            list._uses[working.Rule] = list._uses.GetValueOrDefault(working.Rule) + 1;
        }

        list.Groups = [.. order.Select(o => list.Entries(o.Group, o.Workings, figures))];
        list.Rules = [.. list._rules.OrderBy(r => r.Value).Select(r => (RuleNumber(r.Value), list.RuleText(r.Key)))];
        return list;
    }

    // The workings of a group that are not yet told, each figure followed by what goes into it and is no figure itself.
    private List<Working> Order(WorkingsGroup group, HashSet<int> figures)
    {
        var told = new List<Working>();
        foreach (Working figure in group.Workings) Tell(figure, isFigure: true);
        return told;

        void Tell(Working working, bool isFigure)
        {
            int identity = _identity.NumberOf(working);
            if (_numbers.ContainsKey(identity) || (!isFigure && (figures.Contains(identity) || IsDecided(working)))) return;
            _numbers[identity] = _numbers.Count + 1;
            told.Add(working);
            foreach (Working input in working.Inputs) Tell(input, isFigure: false);
        }
    }

    private WorkingsGroupEntries Entries(WorkingsGroup group, List<Working> told, HashSet<int> figures)
    {
        HashSet<int> here = [.. told.Select(_identity.NumberOf)];
        return new WorkingsGroupEntries(
            group.Heading,
            [.. told.Select(w => new WorkingsEntry(Number(w), figures.Contains(_identity.NumberOf(w)), Equation(w), How(w)))],
            [.. group.Workings.Where(w => !here.Contains(_identity.NumberOf(w))).Select(w => $"{Value(w)}, {_wording.Tell("see")} {Text(Number(w))}").Distinct(StringComparer.Ordinal)]);
    }

    private int Number(Working working) => _numbers[_identity.NumberOf(working)];

    private string How(Working working)
    {
        if (working.Inputs.IsEmpty) return IsDecided(working) ? _wording.Tell("Decided.") : RuleText(working.Rule, working.Label);
        string rule = _uses[working.Rule] > 1 ? RuleNumber(NumberOf(working.Rule)) : RuleText(working.Rule, working.Label);
        string numbers = string.Join(", ", working.Inputs.Where(IsTold).Select(i => Text(Number(i))).Distinct());
        string decided = string.Join(", ", working.Inputs.Where(i => !IsTold(i)).Select(Value).Distinct());
        if (decided.Length > 0) decided = $"{_wording.Tell("decided")}: {decided}";
        string from = string.Join("; ", new[] { numbers, decided }.Where(t => t.Length > 0));
        return rule.EndsWith('.') ? $"{rule} {_wording.Tell("From")} {from}." : $"{rule} {_wording.Tell("from")} {from}.";
    }

    private bool IsTold(Working working) => _numbers.ContainsKey(_identity.NumberOf(working));

    private int NumberOf(Rule rule)
    {
        if (!_rules.TryGetValue(rule, out int number)) _rules[rule] = number = _rules.Count + 1;
        return number;
    }

    private static bool IsDecided(Working working) => working.Inputs.IsEmpty && working.Rule.Source.Kind == SourceKind.Decision;

    private static string RuleNumber(int number) => $"R{Text(number)}";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private string Value(Working working) => $"{_wording.Tell(working.Label)} {_wording.Tell(working.Format(UnitStyle.Metric))}";

    private string Equation(Working working)
    {
        string label = _wording.Tell(working.Label);
        string metric = _wording.Tell(working.Format(UnitStyle.Metric));
        string customary = _wording.Tell(working.Format(UnitStyle.Customary));
        string both = metric == customary ? metric : $"{metric} ({customary})";
        string range = working.Spread.StandardDeviation > 0 ? Range(working) : "";
        return range.Length == 0 ? $"{label} = {both}." : $"{label} = {both}, {range}.";
    }

    // From and to, the unit said once; nothing if both read alike.
    private string Range(Working working)
    {
        string low = Rounded(working.Kind, Math.Max(0, working.Lower95));
        string high = Rounded(working.Kind, working.Upper95);
        if (low == high) return "";
        int blank = low.IndexOf(' ', StringComparison.Ordinal);
        if (blank > 0 && high.EndsWith(low[blank..], StringComparison.Ordinal)) low = low[..blank];
        return _wording.Tell($"{low} to {high}");
    }

    // A bare number is known no better than to three digits where it has a range; its whole part stands as it is.
    private static string Rounded(QuantityKind kind, double value) => kind == QuantityKind.Number
        ? value.ToString(value < 1000 ? "G3" : "0", CultureInfo.InvariantCulture)
        : QuantityText.Format(kind, value, UnitStyle.Metric);

    // A rule in full: its trade name unless the figure is called so, its formula, its source unless it follows from the formula.
    private string RuleText(Rule rule, string label = "")
    {
        string formula = _wording.Tell(rule.Formula);
        string text = rule.Name == rule.Formula || rule.Name == label ? formula : $"{_wording.Tell(rule.Name)}: {formula}";
        string sentence = $"{char.ToUpperInvariant(text[0])}{text[1..]}.";
        return rule.Source.Kind == SourceKind.Derivation && rule.Source == Source.Derivation ? sentence : $"{sentence} {SourceText(rule.Source)}";
    }

    private string SourceText(Source source) => source.Kind is SourceKind.Published or SourceKind.Standard or SourceKind.FromMemory
        ? $"{_wording.Tell("Source")}: {source.In(_wording)}."
        : _wording.Tell($"{char.ToUpperInvariant(source.Name[0])}{source.Name[1..]}.");
}
