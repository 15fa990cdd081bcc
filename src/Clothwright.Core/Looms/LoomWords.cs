using System.Collections.Frozen;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Looms;

/// <summary>Reads the words by which weavers name a kind of loom and its shed.</summary>
public static class LoomWords
{
    private static readonly FrozenDictionary<string, LoomKind> Kinds = new Dictionary<string, LoomKind>
    {
        ["rigidheddle"] = LoomKind.RigidHeddle,
        ["table"] = LoomKind.Table,
        ["tableloom"] = LoomKind.Table,
        ["floor"] = LoomKind.Floor,
        ["floorloom"] = LoomKind.Floor,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, ShedAction> Sheds = new Dictionary<string, ShedAction>
    {
        ["rising"] = ShedAction.Rising,
        ["jack"] = ShedAction.Rising,
        ["sinking"] = ShedAction.Sinking,
        ["counterbalance"] = ShedAction.Counterbalance,
        ["counterbalanced"] = ShedAction.Counterbalance,
        ["countermarche"] = ShedAction.Countermarche,
        ["countermarch"] = ShedAction.Countermarche,
        ["levers"] = ShedAction.Levers,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads a kind of loom, for example <c>rigid heddle</c>.</summary>
    /// <param name="text">The text; case, blanks and hyphens do not matter.</param>
    public static Parsed<LoomKind> ParseKind(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Kinds.TryGetValue(Joined(text), out LoomKind kind)
            ? kind
            : new InputProblem($"\"{text}\" is not a kind of loom.", "kind", "Write \"rigid heddle\", \"table\" or \"floor\".") { Text = text, Position = 0 };
    }

    /// <summary>Reads how a loom opens its shed, for example <c>jack</c> or <c>counterbalance</c>.</summary>
    /// <param name="text">The text; case, blanks and hyphens do not matter.</param>
    public static Parsed<ShedAction> ParseShed(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Sheds.TryGetValue(Joined(text), out ShedAction shed)
            ? shed
            : new InputProblem(
                $"\"{text}\" does not say how the shed opens.",
                "shed",
                "Write \"rising\" (jack), \"sinking\", \"counterbalance\", \"countermarche\" or \"levers\".")
            { Text = text, Position = 0 };
    }

    private static string Joined(string text) =>
        text.Trim().Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
}
