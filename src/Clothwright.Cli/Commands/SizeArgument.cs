using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Cli.Commands;

/// <summary>Reads a yarn's size given as an argument, its system as an option.</summary>
internal static class SizeArgument
{
    /// <summary>The system named by the option; null if none is named.</summary>
    /// <param name="name">What stands behind <c>--system</c>.</param>
    /// <exception cref="InputProblemException">There is no such system.</exception>
    public static CountSystem? System(string? name) => name is null ? null : CountSystems.Parse(name, "--system").Value;

    /// <summary>Mass per length.</summary>
    /// <param name="text">A count or a label.</param>
    /// <param name="system">The system, if named.</param>
    /// <param name="where">Which argument it is.</param>
    /// <exception cref="InputProblemException">It is no count, or one that several systems could have written; the mend then names the option.</exception>
    public static Derived<LinearDensity> Read(string text, CountSystem? system, string where)
    {
        Parsed<Derived<LinearDensity>> size = YarnSize.Parse(text, system, where);
        if (size.Problem is not { } problem) return size.Value;
        bool needsSystem = system is null && YarnCount.Readings(text).Length > 1;
        throw new InputProblemException(needsSystem
            ? problem with { Mend = $"Say which with --system, for example --system {YarnCount.Readings(text)[0].System.Definition().Name}; or give length and mass from the label." }
            : problem);
    }

    /// <summary>What to know of how a count was understood; null when there was no choice.</summary>
    /// <param name="text">A count or a label that can be read.</param>
    /// <param name="system">The system, if named.</param>
    public static string? Remark(string text, CountSystem? system)
    {
        if (YarnLabel.Parse(text).Succeeded) return null;
        if (system is { } given) return YarnCount.Parse(text, given).TryGet(out YarnCount? count) ? count.Remark : null;
        return YarnCount.Readings(text) is [var only] ? only.Remark : null;
    }
}
