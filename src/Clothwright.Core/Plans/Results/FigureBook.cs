using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.Results;

/// <summary>All figures of a plan by name, in the order in which they are shown.</summary>
public sealed class FigureBook
{
    private readonly Dictionary<string, Figure> _byName;

    internal FigureBook(ImmutableArray<Figure> all)
    {
        All = all;
        _byName = all.ToDictionary(f => f.Name, StringComparer.Ordinal);
    }

    /// <summary>No figures.</summary>
    public static FigureBook Empty { get; } = new([]);

    /// <summary>Every figure.</summary>
    public ImmutableArray<Figure> All { get; }

    /// <summary>Looks a figure up.</summary>
    /// <param name="name">Its name; case does not matter.</param>
    /// <returns>The figure, or the problem that there is none of that name, with the nearest name as the mend.</returns>
    public Parsed<Figure> Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string wanted = name.Trim();
        if (_byName.TryGetValue(wanted, out Figure? found)) return found;
        if (All.FirstOrDefault(f => string.Equals(f.Name, wanted, StringComparison.OrdinalIgnoreCase)) is { } alike) return alike;
        string nearest = NearestName.Of(wanted, All.Select(f => f.Name)) ?? "warpLength";
        return new InputProblem(
            $"The plan has no figure called \"{name}\".",
            "figure",
            $"Write for example {nearest}. The figures are: {string.Join(", ", All.Select(f => f.Name))}.");
    }
}
