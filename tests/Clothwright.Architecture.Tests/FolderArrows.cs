using ArchUnitNET.Domain;
using ArchUnitNET.Domain.Extensions;

namespace Clothwright.Architecture.Tests;

/// <summary>Finds arrows between the folders of Core that run the wrong way.</summary>
internal static class FolderArrows
{
    /// <summary>The folders in groups; a type may use its own folder and those of earlier groups, never a later group or a neighbour of its own.</summary>
    public static readonly string[][] Order =
    [
        ["Quantities"],
        ["Wordings"],
        ["Workings"],
        ["Colours"],
        ["Photographs"],
        ["Yarns", "Looms"],
        ["Weaves", "Calibration"],
        ["Setts"],
        ["Cloths"],
        ["Plans"],
        ["Dressing", "Weaving", "Finishing"],
        ["Worksheets"],
        ["Publishing"],
    ];

    /// <summary>Every arrow below a namespace that breaks the order, as <c>From -> To</c>.</summary>
    /// <param name="architecture">The loaded types.</param>
    /// <param name="root">The namespace whose next part is the folder.</param>
    public static IReadOnlyList<string> Breaches(ArchUnitNET.Domain.Architecture architecture, string root) =>
        [.. architecture.Types
            .SelectMany(from => from.Dependencies.Select(d => (From: from, To: d.Target)))
            .Select(a => (a.From.FullName, FromFolder: Folder(a.From, root), ToName: a.To.FullName, ToFolder: Folder(a.To, root)))
            .Where(a => a.FromFolder is not null && a.ToFolder is not null && a.FromFolder != a.ToFolder)
            .Where(a => Rank(a.FromFolder!) <= Rank(a.ToFolder!))
            .Select(a => $"{a.FullName} -> {a.ToName}")
            .Distinct()
            .Order(StringComparer.Ordinal)];

    /// <summary>Folders below a namespace that the order does not name.</summary>
    public static IReadOnlyList<string> Unplaced(ArchUnitNET.Domain.Architecture architecture, string root) =>
        [.. architecture.Types
            .Select(t => Folder(t, root))
            .OfType<string>()
            .Distinct()
            .Where(f => !Order.Any(group => group.Contains(f)))];

    private static int Rank(string folder) => Array.FindIndex(Order, group => group.Contains(folder));

    private static string? Folder(IType type, string root)
    {
        string? space = type.Namespace?.FullName;
        return space is not null && space.StartsWith(root + ".", StringComparison.Ordinal)
            ? space[(root.Length + 1)..].Split('.')[0]
            : null;
    }
}
