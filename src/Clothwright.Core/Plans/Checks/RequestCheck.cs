using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Checks;

/// <summary>Finds what keeps a warp from being planned, before anything is reckoned.</summary>
internal static class RequestCheck
{
    // Far beyond any warp wound by hand, and low enough that every count of picks fits.
    private const double LongestMetres = 1000;

    /// <summary>The first thing that is wrong with a request, or null.</summary>
    /// <param name="request">The decisions.</param>
    public static InputProblem? Problem(PlanRequest request) =>
        Shelf(request)
        ?? Bench(request)
        ?? Warp(request)
        ?? Pieces(request)
        ?? KnownCheck.Problem(request);

    /// <summary>The yarn of an id.</summary>
    /// <exception cref="InputProblemException">The shelf holds none of that id.</exception>
    public static Yarn YarnOf(PlanRequest request, string id, string where) =>
        request.Shelf.FirstOrDefault(y => y.Id == id) ?? throw new InputProblemException(UnknownYarn(request, id, where));

    private static InputProblem? Shelf(PlanRequest request)
    {
        if (request.Shelf.IsDefaultOrEmpty) return new InputProblem("The shelf holds no yarn.", "shelf", "Put at least one yarn on it.");
        return Twice(request.Shelf.Select(y => y.Id), "shelf", "yarn");
    }

    private static InputProblem? Bench(PlanRequest request)
    {
        ImmutableArray<Loom> looms = request.Bench.Looms;
        if (looms.IsDefaultOrEmpty) return new InputProblem("The bench holds no loom.", "bench.looms", "Put at least one loom on it.");
        if (Twice(looms.Select(l => l.Id), "bench.looms", "loom") is { } twice) return twice;
        for (int i = 0; i < looms.Length; i++)
        {
            ImmutableArray<InputProblem> problems = LoomChecks.Problems(looms[i]);
            if (!problems.IsEmpty) return problems[0].Under($"bench.looms[{i}]");
        }

        return looms.Any(l => l.Id == request.LoomId)
            ? null
            : new InputProblem($"There is no loom \"{request.LoomId}\" on the bench.", "loom", Nearest(request.LoomId, looms.Select(l => l.Id)));
    }

    private static InputProblem? Warp(PlanRequest request)
    {
        WarpOrder order = request.Warp;
        if (order.Runs.IsDefaultOrEmpty) return new InputProblem("The warp has no yarn.", "warp.order", "Name at least one yarn of the shelf.");
        for (int i = 0; i < order.Runs.Length; i++)
        {
            string where = $"warp.order[{i}]";
            if (order.Runs[i].Threads < 1) return new InputProblem($"A run of {order.Runs[i].Threads} ends cannot be wound.", where, "Give at least 1 end.");
            if (!Knows(request, order.Runs[i].YarnId)) return UnknownYarn(request, order.Runs[i].YarnId, $"{where}.yarn");
        }

        if (order.Threads > DraftLimits.Ends)
        {
            return new InputProblem($"The order holds {order.Threads} ends.", "warp.order", $"Give at most {DraftLimits.Ends}; an order repeats by itself.");
        }

        return request.SelvedgeEnds < 0
            ? new InputProblem($"{request.SelvedgeEnds} selvedge ends cannot be wound.", "warp.selvedgeEnds", "Give 0 or more, for example 2.")
            : null;
    }

    private static InputProblem? Pieces(PlanRequest request)
    {
        if (request.Pieces.IsDefaultOrEmpty) return new InputProblem("Nothing is to be woven.", "pieces", "Add at least one piece with its width and length.");
        for (int i = 0; i < request.Pieces.Length; i++)
        {
            if (PieceCheck.Problem(request, request.Pieces[i], $"pieces[{i}]") is { } problem) return problem;
        }

        double metres = request.Pieces.Sum(p => p.Length.Metres * p.Count);
        if (metres > LongestMetres) return new InputProblem($"The pieces are {metres:0} m long together.", "pieces", $"Plan at most {LongestMetres:0} m on one warp.");
        int layers = request.Pieces[0].Make.Layers();
        for (int i = 1; i < request.Pieces.Length; i++)
        {
            if (request.Pieces[i].Make.Layers() == layers) continue;
            return new InputProblem(
                $"\"{request.Pieces[i].Name}\" is woven in {request.Pieces[i].Make.Layers()} layers and \"{request.Pieces[0].Name}\" in {layers}; one sett cannot serve both.",
                $"pieces[{i}].make",
                "Plan a warp of its own for it.");
        }

        return request.Weave.Layers == 1
            ? null
            : new InputProblem(
                $"{request.Weave.Name} already lies in {request.Weave.Layers} layers.", "weave", "Name the weave of one layer, for example plain, and make the piece doubleWidth or tube.");
    }

    /// <summary>Whether the shelf holds a yarn.</summary>
    public static bool Knows(PlanRequest request, string id) => request.Shelf.Any(y => y.Id == id);

    /// <summary>The problem that the shelf does not hold a yarn.</summary>
    public static InputProblem UnknownYarn(PlanRequest request, string id, string where) =>
        new($"There is no yarn \"{id}\" on the shelf.", where, Nearest(id, request.Shelf.Select(y => y.Id)));

    private static string Nearest(string written, IEnumerable<string> names)
    {
        string[] all = [.. names];
        string known = string.Join(", ", all.Take(12));
        return NearestName.Of(written, all) is { } nearest ? $"Write \"{nearest}\" if that is what is meant; there are: {known}." : $"Use one of: {known}.";
    }

    private static InputProblem? Twice(IEnumerable<string> ids, string where, string what)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        int i = 0;
        foreach (string id in ids)
        {
            if (!seen.Add(id)) return new InputProblem($"Two entries have the id \"{id}\".", $"{where}[{i}].id", $"Give each {what} an id of its own, for example \"{id}-2\".");
            i++;
        }

        return null;
    }
}
