using System.Globalization;
using Clothwright.Fuzzing;

// A small program for a desk or a night's run: the same mutations, in smaller numbers, run with the tests.
const string Usage = "usage: clothwright-fuzzing wif|grid|table|all [--count 200000] [--seed 1]";
string kind = args.Length > 0 ? args[0] : "";
int count = Option("--count", 200_000);
int seed = Option("--seed", 1);
string[] kinds = kind == "all" ? ["wif", "grid", "table"] : [kind];
if (count < 1 || kinds.Any(k => FuzzTargets.Find(k) is null))
{
    Console.Error.WriteLine(Usage);
    return 2;
}

bool clean = true;
foreach (string k in kinds)
{
    FuzzReport report = FuzzRun.Of(FuzzTargets.Find(k)!, count, seed);
    Console.WriteLine(report);
    clean &= report.IsClean;
}

return clean ? 0 : 1;

int Option(string name, int usual)
{
    int at = Array.IndexOf(args, name);
    if (at < 0) return usual;
    return at + 1 < args.Length && int.TryParse(args[at + 1], NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : -1;
}
