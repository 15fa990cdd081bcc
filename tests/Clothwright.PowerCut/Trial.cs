using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.PowerCut;

/// <summary>Starts, saves, kills, looks; at the end loses a save on purpose and expects to be told.</summary>
internal sealed class Trial(string folder, int times, int seed)
{
    private const int Weavers = 3;
    private readonly Random _chance = new(seed);
    private readonly Weaver[] _weavers = [.. Enumerable.Range(1, Weavers).Select(i => new Weaver($"scarf-{i}", Sample()))];

    private int Saves => _weavers.Sum(w => w.Count);

    public async Task<int> RunAsync()
    {
        for (int round = 1; round <= times; round++)
        {
            using (ServerProcess server = await ServerProcess.StartAsync(folder))
            {
                using var http = new HttpClient { BaseAddress = server.Address };
                Task[] saving = [.. _weavers.Select(w => w.SaveAsync(http))];
                // Every fifth time the cut comes while the server still warms up; else somewhere in the stream of saves.
                if (round % 5 != 0) await FirstSaveAsync();
                await Task.Delay(TimeSpan.FromMilliseconds(_chance.Next(1, 400)));
                await server.KillAsync();
                await Task.WhenAll(saving);
            }

            // Reading the file through SQLite here would put its log in order; the restarted server has to do that itself.
            if (round % 10 == 0 || round == times)
            {
                if (Report(round, await LookAsync()) > 0) return 1;
            }
        }

        string integrity = Inspection.Integrity(folder);
        Inspection.LoseOne(folder);
        bool noticed = (await LookAsync()).Count > 0;
        Console.WriteLine($"Killed {times} times (seed {seed}): {Saves} acknowledged saves, all there; integrity check: {integrity}; a save lost on purpose was {(noticed ? "" : "NOT ")}noticed.");
        return integrity == "ok" && noticed && Saves > times ? 0 : 1;
    }

    private async Task FirstSaveAsync()
    {
        int before = Saves;
        for (int waited = 0; Saves == before; waited++)
        {
            if (waited == 1500) throw new InvalidOperationException("The server acknowledged no save within 30 seconds.");
            await Task.Delay(20);
        }
    }

    private async Task<List<string>> LookAsync()
    {
        using ServerProcess server = await ServerProcess.StartAsync(folder);
        using var http = new HttpClient { BaseAddress = server.Address };
        List<string> faults = await Inspection.FaultsAsync(http, _weavers);
        await server.KillAsync();
        return faults;
    }

    private int Report(int round, List<string> faults)
    {
        Console.WriteLine($"after {round} kills: {Saves} acknowledged saves, {faults.Count} faults");
        foreach (string fault in faults) Console.Error.WriteLine(fault);
        return faults.Count;
    }

    private static Worksheet Sample()
    {
        using Stream stream = typeof(Server.ServerHost).Assembly.GetManifestResourceStream("samples/reedbed-scarves.json")!;
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return WorksheetReader.Read(bytes).Value;
    }
}
