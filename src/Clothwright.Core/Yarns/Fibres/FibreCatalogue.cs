using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>All fibres that are known, with their data and sources.</summary>
public static class FibreCatalogue
{
    private static readonly ImmutableDictionary<string, Fibre> ByName;

    static FibreCatalogue()
    {
        All = FibreTable.Read();
        ByName = All
            .SelectMany(f => f.Synonyms.Append(f.Id).Append(f.Name.ToLowerInvariant()).Distinct(StringComparer.Ordinal), (fibre, name) => (fibre, name))
            .ToImmutableDictionary(p => p.name, p => p.fibre, StringComparer.Ordinal);
    }

    /// <summary>Every fibre once.</summary>
    public static ImmutableArray<Fibre> All { get; }

    /// <summary>Finds a fibre by its id, its name or a usual synonym, for example <c>bamboo-viscose</c>, <c>silk</c>, <c>rayon</c>.</summary>
    /// <param name="name">What was typed; case, blanks at the ends and hyphens for blanks do not matter.</param>
    /// <param name="where">Field path for a problem.</param>
    /// <returns>The fibre, or a problem that suggests the nearest names.</returns>
    public static Parsed<Fibre> Find(string name, string where = "fibre")
    {
        ArgumentNullException.ThrowIfNull(name);
        string wanted = string.Join(' ', name.ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (ByName.TryGetValue(wanted, out Fibre? found) || ByName.TryGetValue(wanted.Replace(' ', '-'), out found) || ByName.TryGetValue(wanted.Replace('-', ' '), out found)) return found;
        return new InputProblem(What(name, wanted), where, Mend(wanted)) { Text = name, Position = 0 };
    }

    /// <summary>The fibre with an id of the table; for code that names fibres itself.</summary>
    /// <param name="id">The id, for example <c>cotton</c>.</param>
    /// <exception cref="ArgumentException">No fibre has that id.</exception>
    public static Fibre Get(string id) => All.FirstOrDefault(f => string.Equals(f.Id, id, StringComparison.Ordinal))
        ?? throw new ArgumentException($"No fibre has the id {id}.", nameof(id));

    private static string What(string name, string wanted) => wanted.Length == 0
        ? "No fibre was given."
        : wanted == "chenille" ? "\"chenille\" is a way to make yarn, not a fibre." : $"{TextCursor.Quote(name)} is not a fibre that is known here.";

    private static string Mend(string wanted)
    {
        if (wanted == "chenille") return "Name the fibre of its pile, for example viscose, and give the construction as chenille.";
        IReadOnlyList<string> near = wanted.Length == 0 ? [] : NearestName.Several(wanted, ByName.Keys);
        return near.Count > 0
            ? $"Did you mean {string.Join(", ", near)}?"
            : $"Use one of {string.Join(", ", All.Select(f => f.Id))}.";
    }
}
