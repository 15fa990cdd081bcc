using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>All count systems with their names, factors and sources.</summary>
public static class CountSystems
{
    private static readonly ImmutableDictionary<CountSystem, CountSystemDefinition> BySystem;
    private static readonly ImmutableDictionary<string, CountSystemDefinition> ByWord;

    static CountSystems()
    {
        All = [.. EmbeddedTable.Rows("count-systems.table.txt").Select(Read)];
        BySystem = All.ToImmutableDictionary(s => s.System);
        ByWord = All
            .SelectMany(s => s.Aliases.Append(s.Name).Append(s.Sign.ToLowerInvariant()).Distinct(StringComparer.Ordinal), (s, word) => (s, word))
            .ToImmutableDictionary(p => p.word, p => p.s, StringComparer.Ordinal);
        Spellings = [.. ByWord.Keys.OrderByDescending(w => w.Length).ThenBy(w => w, StringComparer.Ordinal)];
    }

    /// <summary>Every system once; those most usual in handweaving first.</summary>
    public static ImmutableArray<CountSystemDefinition> All { get; }

    /// <summary>Every spelling of every system, longest first.</summary>
    internal static ImmutableArray<string> Spellings { get; }

    /// <summary>What a system's numbers mean.</summary>
    /// <param name="system">The system.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not one of the systems.</exception>
    public static CountSystemDefinition Definition(this CountSystem system) => BySystem.TryGetValue(system, out CountSystemDefinition? found)
        ? found
        : throw new ArgumentOutOfRangeException(nameof(system), system, "This is not a count system.");

    /// <summary>Reads the name of a system, for example <c>cotton</c>, <c>Nm</c>, <c>woollen-run</c>, <c>yd/lb</c>.</summary>
    /// <param name="text">The name, a sign or another spelling; case does not matter.</param>
    /// <param name="where">Field path for a problem.</param>
    public static Parsed<CountSystem> Parse(string text, string where = "system")
    {
        ArgumentNullException.ThrowIfNull(text);
        string word = text.Trim().ToLowerInvariant();
        if (ByWord.TryGetValue(word, out CountSystemDefinition? found)) return found.System;
        IReadOnlyList<string> near = NearestName.Several(word, ByWord.Keys);
        return new InputProblem(
            $"{TextCursor.Quote(text)} is not a count system.",
            where,
            near.Count > 0
                ? $"Did you mean {string.Join(" or ", near)}? For example: cotton."
                : $"Use one of {string.Join(", ", All.Select(s => s.Name))}.")
        {
            Text = text,
            Position = 0,
        };
    }

    internal static CountSystem OfSpelling(string spelling) => ByWord[spelling].System;

    private static CountSystemDefinition Read(ImmutableDictionary<string, string> row)
    {
        string[] usual = row["usual"].Split('-');
        return new CountSystemDefinition(
            Enum.Parse<CountSystem>(row["system"]),
            row["name"],
            [.. row["also"].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)],
            row["title"],
            row["sign"],
            string.Equals(row["kind"], "direct", StringComparison.Ordinal),
            LengthText.Parse(row["length"]).Value,
            MassText.Parse(row["mass"]).Value,
            row["plies"] switch
            {
                "count-first" => PlyOrder.CountFirst,
                "ply-first" => PlyOrder.PlyFirst,
                "either" => PlyOrder.Either,
                "resultant" => PlyOrder.Resultant,
                "stated" => PlyOrder.Stated,
                "none" => PlyOrder.None,
                var other => throw new InvalidOperationException($"\"{other}\" is not an order of count and plies."),
            },
            usual[0].Length == 0 ? null : (double.Parse(usual[0], CultureInfo.InvariantCulture), double.Parse(usual[1], CultureInfo.InvariantCulture)),
            SourceText.Read(row["source"]));
    }
}
