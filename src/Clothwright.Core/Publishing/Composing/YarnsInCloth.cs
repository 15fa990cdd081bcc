using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The look of each yarn of a plan in its cloth, made once.</summary>
internal sealed class YarnsInCloth(PlanResult plan, bool washed)
{
    private readonly Dictionary<(string Yarn, int Strands, string? Clasped, double Share), ThreadLook> _known = [];

    /// <summary>An end.</summary>
    /// <param name="yarn">The yarn's id.</param>
    public ThreadLook Of(string yarn) => Of(yarn, 1, null, 0);

    /// <summary>A pick; of a clasped pick both yarns lie doubled.</summary>
    /// <param name="run">The weft.</param>
    public ThreadLook Of(WeftRun run) =>
        run.ClaspedWith is { } other ? Of(run.YarnId, 2 * run.Strands, other, run.ClaspShare) : Of(run.YarnId, run.Strands, null, 0);

    private ThreadLook Of(string yarn, int strands, string? clasped, double share)
    {
        if (_known.TryGetValue((yarn, strands, clasped, share), out ThreadLook? known)) return known;
        ThreadLook look = ThreadLooks.Of(WeftOrder.Yarn(plan, yarn), strands, washed);
        if (clasped is not null) look = look with { ClaspedWith = Of(clasped, strands, null, 0), ClaspShare = share };
        return _known[(yarn, strands, clasped, share)] = look;
    }
}
