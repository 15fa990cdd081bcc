using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Sheet;

/// <summary>Finds the decision that settles a warning, where there is one.</summary>
internal static class Mends
{
    /// <summary>The mend for a warning; null where the weaver has to weigh it herself.</summary>
    public static Mend? For(PlanWarning warning, Worksheet worksheet, PlanResult plan) => warning.Id switch
    {
        "sett-open" or "sett-close" or "sett-too-close" when worksheet.Sett is not null =>
            new Mend("mend.sett", plan.SettAdvice.Ends, worksheet with { Sett = null, Reed = null }),
        "sett-open" or "sett-close" or "sett-too-close" or "reed-off" when worksheet.Reed is not null =>
            new Mend("mend.reed", null, worksheet with { Reed = null }),
        "loose-selvedge" when !worksheet.FloatingSelvedges =>
            new Mend("mend.selvedge", null, worksheet with { FloatingSelvedges = true }),
        "cut-repeat" => new Mend("mend.repeat", null, worksheet with { EndsFit = Core.Plans.Briefs.EndsFit.WholeRepeats }),
        _ => null,
    };
}
