using System.Collections;
using System.Reflection;
using Clothwright.Core.Workings;

namespace Clothwright.Published.Tests.Rules;

/// <summary>Gathers every rule and every value of a table that answers of the program show.</summary>
internal sealed class RuleHarvest
{
    private readonly HashSet<object> _seen = new(ReferenceEqualityComparer.Instance);

    private readonly Dictionary<(string Name, string Formula, Source Source), Rule> _rules = [];

    private readonly Dictionary<(string Name, string Formula, Source Source), Working> _values = [];

    /// <summary>Rules that turn inputs into a number, or words into a weave.</summary>
    public IEnumerable<Rule> Rules => _rules.Values;

    /// <summary>Numbers without inputs that the program brings along.</summary>
    public IEnumerable<Working> Values => _values.Values;

    /// <summary>Looks through an answer, and whatever it holds of ours.</summary>
    public RuleHarvest Of(object? answer)
    {
        switch (answer)
        {
            case null or string or Enum or Type or Delegate:
                break;
            case Working working:
                Add(working);
                break;
            case Rule rule:
                _rules.TryAdd((rule.Name, rule.Formula, rule.Source), rule);
                break;
            case IDerived derived:
                Add(derived.Working);
                break;
            case IEnumerable many:
                if (IsOurs(answer) || HoldsOurs(answer.GetType())) foreach (object? one in many) Of(one);
                break;
            default:
                if (IsOurs(answer)) Members(answer);
                break;
        }

        return this;
    }

    private void Add(Working working)
    {
        if (!_seen.Add(working)) return;
        Rule rule = working.Rule;
        var key = (rule.Name, rule.Formula, rule.Source);
        if (!working.Inputs.IsEmpty) _rules.TryAdd(key, rule);
        else if (rule.Source.Kind is not (SourceKind.Decision or SourceKind.Measured)) _values.TryAdd(key, working);
        foreach (Working input in working.Inputs) Add(input);
    }

    private void Members(object answer)
    {
        if (!answer.GetType().IsValueType && !_seen.Add(answer)) return;
        foreach (PropertyInfo property in answer.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0 && !p.PropertyType.IsByRefLike && !p.PropertyType.IsPrimitive))
        {
            object? value;
            try
            {
                value = property.GetValue(answer);
            }
            catch (TargetInvocationException)
            {
                continue; // the default of a quantity says so when it is read
            }

            Of(value);
        }
    }

    private static bool IsOurs(object answer) => answer.GetType().Namespace?.StartsWith("Clothwright.", StringComparison.Ordinal) == true;

    private static bool HoldsOurs(Type type) => (type.IsArray ? [type.GetElementType()!] : type.GetGenericArguments()).Any(t => t.Namespace?.StartsWith("Clothwright.", StringComparison.Ordinal) == true);
}
