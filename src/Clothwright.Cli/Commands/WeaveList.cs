using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Cli.Commands;

/// <summary>Every weave that can be asked for, with its choices.</summary>
internal static class WeaveList
{
    /// <summary>The list, family by family.</summary>
    public static Report Report()
    {
        var text = new StringBuilder();
        foreach (IGrouping<string, WeaveEntry> family in WeaveCatalogue.All.GroupBy(w => w.Family))
        {
            text.AppendLine(family.Key);
            foreach (WeaveEntry weave in family)
            {
                text.AppendLine($"  {weave.Name}: {weave.InShort}");
                foreach (WeaveParameter parameter in weave.Parameters)
                {
                    text.AppendLine($"      {parameter.Name}{(parameter.Default.Length > 0 ? "=" + parameter.Default : "")}  {parameter.Meaning}");
                }
            }
        }

        return new Report(text.ToString().TrimEnd(), new JsonObject
        {
            ["weaves"] = new JsonArray([.. WeaveCatalogue.All.Select(w => new JsonObject
            {
                ["name"] = w.Name,
                ["family"] = w.Family,
                ["inShort"] = w.InShort,
                ["otherNames"] = new JsonArray([.. w.OtherNames.Select(n => (JsonNode)n)]),
                ["choices"] = new JsonArray([.. w.Parameters.Select(p => new JsonObject { ["name"] = p.Name, ["meaning"] = p.Meaning, ["default"] = p.Default })]),
            })]),
        });
    }
}
