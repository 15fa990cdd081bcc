using System.Globalization;
using Clothwright.PowerCut;

// Kills the server while it saves, again and again, and checks that nothing it acknowledged is lost.
// Usage: dotnet run --project tests/Clothwright.PowerCut -- [TIMES] [SEED]
int times = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 20;
int seed = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
string folder = Directory.CreateTempSubdirectory("clothwright-power-cut-").FullName;
try
{
    return await new Trial(folder, times, seed).RunAsync();
}
finally
{
    Directory.Delete(folder, recursive: true);
}
