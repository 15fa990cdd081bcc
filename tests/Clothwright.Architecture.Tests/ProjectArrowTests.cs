using System.Reflection;

namespace Clothwright.Architecture.Tests;

public class ProjectArrowTests
{
    // What each project may use: ours by name, packages by the assembly they bring. The framework itself is always allowed.
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Clothwright.Core"] = [],
        ["Clothwright.Interchange"] = ["Clothwright.Core", "CsvHelper"],
        ["Clothwright.Drawing"] = ["Clothwright.Core", "SkiaSharp", "SkiaSharp.HarfBuzz", "HarfBuzzSharp"],
        ["Clothwright.Solving"] = ["Clothwright.Core", "Google.OrTools", "Google.Protobuf"],
        ["Clothwright.Storage"] = ["Clothwright.Core", "Clothwright.Interchange", "Microsoft.EntityFrameworkCore", "Microsoft.EntityFrameworkCore.Abstractions", "Microsoft.EntityFrameworkCore.Relational"],
        ["Clothwright.Storage.Sqlite"] =
        [
            "Clothwright.Storage", "Microsoft.EntityFrameworkCore", "Microsoft.EntityFrameworkCore.Relational", "Microsoft.EntityFrameworkCore.Abstractions",
            "Microsoft.EntityFrameworkCore.Sqlite", "Microsoft.Data.Sqlite",
        ],
        ["Clothwright.Storage.PostgreSql"] =
        [
            "Clothwright.Core", "Clothwright.Storage", "Microsoft.EntityFrameworkCore", "Microsoft.EntityFrameworkCore.Relational", "Microsoft.EntityFrameworkCore.Abstractions",
            "Npgsql", "Npgsql.EntityFrameworkCore.PostgreSQL",
        ],
        ["Clothwright.Server"] =
        [
            "Clothwright.Core", "Clothwright.Interchange", "Clothwright.Drawing", "Clothwright.Storage", "Clothwright.Storage.Sqlite", "Clothwright.Storage.PostgreSql",
            "Microsoft.AspNetCore", "Microsoft.AspNetCore.*", "Microsoft.Extensions.*", "Microsoft.Net.Http.Headers", "Microsoft.OpenApi",
        ],
        ["Clothwright.Client"] =
        [
            "Clothwright.Core", "Clothwright.Interchange",
            "Microsoft.AspNetCore.Components", "Microsoft.AspNetCore.Components.Web", "Microsoft.AspNetCore.Components.WebAssembly",
            "Microsoft.Extensions.DependencyInjection.Abstractions", "Microsoft.Extensions.Logging", "Microsoft.Extensions.Logging.Abstractions",
        ],
        ["clothwright"] =
        [
            "Clothwright.Core", "Clothwright.Interchange", "Clothwright.Drawing", "Clothwright.Solving", "Clothwright.Storage", "Clothwright.Storage.Sqlite",
            "Microsoft.Data.Sqlite", "System.CommandLine",
        ],
    };

    public static TheoryData<string> Projects => [.. Allowed.Keys];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_uses_only_what_it_may(string project) =>
        Assert.Empty(Breaches(Assembly.Load(project), Allowed[project]));

    [Fact]
    public void A_project_that_uses_too_much_is_found() =>
        Assert.Contains("ArchUnitNET", Breaches(typeof(ProjectArrowTests).Assembly, []));

    private static string[] Breaches(Assembly assembly, string[] allowed) =>
        [.. assembly.GetReferencedAssemblies()
            .Select(r => r.Name!)
            .Where(n => !n.StartsWith("System.", StringComparison.Ordinal) || n == "System.CommandLine")
            .Where(n => n is not ("System" or "netstandard" or "mscorlib") && !n.StartsWith("Microsoft.Win32", StringComparison.Ordinal))
            .Where(n => !allowed.Any(a => a.EndsWith(".*", StringComparison.Ordinal) ? n.StartsWith(a[..^1], StringComparison.Ordinal) : a == n))];
}
