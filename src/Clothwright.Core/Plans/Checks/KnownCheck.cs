using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.Checks;

/// <summary>Finds allowances, rates and setts of the weaver's own that cannot be.</summary>
internal static class KnownCheck
{
    // Beyond these a sample was misread; shrinkage below 0 is growth, which hair and superwash do.
    private const double MostShare = 0.8;
    private const double MostGrowth = -0.5;
    private const double ClosestPerCentimetre = 400;

    /// <summary>The first thing that is wrong, or null.</summary>
    public static InputProblem? Problem(PlanRequest request)
    {
        Allowances known = request.Allowances;
        return Share(known.WarpTakeUp, 0, "warpTakeUp")
            ?? Share(known.DrawIn, 0, "drawIn")
            ?? Share(known.ShrinkageInLength, MostGrowth, "shrinkageInLength")
            ?? Share(known.ShrinkageInWidth, MostGrowth, "shrinkageInWidth")
            ?? Share(known.WeftWaste, 0, "weftWaste")
            ?? Rate(request.Rates.WarpWoundPerHour?.Metres, "warpMetresWoundPerHour")
            ?? Rate(request.Rates.EndsThreadedPerHour, "endsThreadedPerHour")
            ?? Rate(request.Rates.EndsSleyedPerHour, "endsSleyedPerHour")
            ?? Rate(request.Rates.PicksPerMinute, "picksPerMinute")
            ?? Close(request.ChosenSett, "sett")
            ?? request.Pieces.Select((p, i) => Close(p.ChosenPicks, $"pieces[{i}].picks")).FirstOrDefault(p => p is not null);
    }

    private static InputProblem? Share(Ratio? share, double least, string field) => share is not { } known || (known.Value >= least && known.Value <= MostShare)
        ? null
        : new InputProblem($"An allowance of {known} cannot be.", $"allowances.{field}", $"Give {least * 100:0} to {MostShare * 100:0} %, for example 8 %.");

    private static InputProblem? Rate(double? rate, string field) => rate is not { } known || (double.IsFinite(known) && known > 0)
        ? null
        : new InputProblem($"A rate of {known} cannot be worked at.", $"rates.{field}", "Give a number above 0, for example 10.");

    private static InputProblem? Close(Sett? sett, string where) => sett is not { } known || known.PerCentimetre <= ClosestPerCentimetre
        ? null
        : new InputProblem($"{known} is closer than any thread.", where, $"Give at most {ClosestPerCentimetre:0} per cm, for example 8 per cm.");
}
