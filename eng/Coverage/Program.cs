// Joins the coverage files of all test projects and says which share of the lines of one project was run.
// Usage: Coverage FOLDER PROJECT LEAST_PERCENT. Exit code 0 when the share is reached, 1 when not, 2 on bad input.
using System.Xml.Linq;

if (args.Length != 3 || !double.TryParse(args[2], out double least))
{
    Console.Error.WriteLine("usage: Coverage FOLDER PROJECT LEAST_PERCENT");
    return 2;
}

var hits = new Dictionary<(string File, int Line), bool>();
foreach (string path in Directory.EnumerateFiles(args[0], "coverage.cobertura.xml", SearchOption.AllDirectories))
{
    foreach (XElement package in XDocument.Load(path).Descendants("package").Where(p => (string?)p.Attribute("name") == args[1]))
    {
        foreach (XElement type in package.Descendants("class"))
        {
            string file = (string)type.Attribute("filename")!;
            if (file.Contains("/obj/") || file.Contains(".g.cs")) continue;
            foreach (XElement line in type.Elements("lines").Elements("line"))
            {
                var key = (file[(file.IndexOf(args[1], StringComparison.Ordinal) is var at && at >= 0 ? at : 0)..], (int)line.Attribute("number")!);
                hits[key] = hits.GetValueOrDefault(key) || (int)line.Attribute("hits")! > 0;
            }
        }
    }
}

if (hits.Count == 0)
{
    Console.Error.WriteLine($"No coverage of {args[1]} was found below {args[0]}.");
    return 2;
}

foreach (var file in hits.GroupBy(h => h.Key.File).Select(g => (File: g.Key, Missed: g.Count(h => !h.Value), All: g.Count())).Where(f => f.Missed > 0).OrderByDescending(f => f.Missed).Take(15))
{
    Console.WriteLine($"{file.Missed,5} of {file.All,5} lines not run  {file.File}");
}

double share = 100.0 * hits.Values.Count(h => h) / hits.Count;
Console.WriteLine($"{args[1]}: {share:0.0} % of {hits.Count} lines run; at least {least:0.0} % wanted");
return share >= least ? 0 : 1;
