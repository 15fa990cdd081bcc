using Clothwright.PhotoCounts;
using Clothwright.TestKit.Photographs;

// series [COUNT]: counts in COUNT synthetic photographs (300) and prints a table.
// turns [COUNT]:  the same for the harder series of two colours in turn.
// sample FILE:    writes the photograph that stands in samples/photographs.
int count = args.Length > 1 && int.TryParse(args[1], out int asked) ? asked : 300;
switch (args.FirstOrDefault())
{
    case "series":
        SeriesTable.Print(SwatchSeries.Swatch, count);
        return 0;
    case "turns":
        SeriesTable.Print(SwatchSeries.InTurn, count);
        return 0;
    case "sample" when args.Length > 1:
        SamplePhotograph.Write(args[1]);
        return 0;
    default:
        Console.Error.WriteLine("Say series [COUNT], turns [COUNT] or sample FILE.");
        return 2;
}
