using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.TestKit;

namespace Clothwright.Interchange.Tests.Samples;

/// <summary>The plans of the samples.</summary>
internal static class SamplePlans
{
    /// <summary>The plan of a sample.</summary>
    /// <param name="name">File name without its ending.</param>
    public static PlanResult Of(string name) => WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", name + ".json"))).Value.Plan().Value;

    /// <summary>What a plan takes of a yarn.</summary>
    public static YarnNeed Yarn(this PlanResult plan, string id) => plan.Yarns.Single(y => y.Yarn.Id == id);
}
