using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;

namespace Clothwright.Published.Tests.Setts;

/// <summary>Reed numbers and sleying by the table.</summary>
public class ReedTableTests
{
    private const string Table = "Tables/reeds.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "RT");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Reeds_are_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        row.Check(id switch
        {
            "R01" => Reed.Parse($"{row["number"]} {row.Text("system")}").Value.Dents is var dents ? [dents.PerInch, Sley.Of(2).In(dents).PerInch, Sley.Of(3).In(dents).PerInch] : [],
            "R02" => [System("bolton").NumberOf(ReedSystem.Stockport.Dents(row["number"]))],
            "R03" => [Sley.Of(2).In(System("bradford").Dents(row["number"])).PerInch],
            "R04" => [Sley.Of(3).In(System("bradford").Dents(row["number"])).PerInch],
            "R05" => [Reed.Parse($"{row["number"]} {row.Text("system")}").Value.Dents.PerInch],
            "R06" => [ReedSystem.Stockport.NumberOf(System("radcliffe").Dents(row["number"]))],
            "R07" or "R08" or "R09" => [Reed.Parse(row.Text("reed")).Value.Dents.PerInch],
            "R10" or "R11" or "R12" => [Sley.Parse(row.Text("sley")).Value.In(Sett.FromPerInch(row["dents"])).PerInch],
            "R13" => Sley.Parse(row.Text("sley")).Value is var s ? [s.Ends, s.Dents] : [],
            "R14" => ReedFitting.InReed(Sett.FromPerInch(row["sett"]), new Reed("8-dent", Sett.FromPerInch(row["dents"]))).Sley is var s
                ? [s.MeanEndsPerDent, s.EndsPerDent.Min(), s.EndsPerDent.Max()] : [],
            "R15" => [
                GreyReed.SettInReed(Sett.FromPerInch(row["ends"]), Ratio.FromValue(row["crimp"])).PerInch,
                GreyReed.Dents(Sett.FromPerInch(row["ends"]), Ratio.FromValue(row["crimp"]), Sley.Of(2)).PerInch],
            "T01" => [
                System("blackburn").Dents(45).PerInch, System("scotch").Dents(37).PerInch, System("leeds").Dents(9).PerInch,
                System("macclesfield").Dents(36).PerInch, System("huddersfield").Dents(12).PerInch],
            _ => throw new InvalidOperationException($"No computation stands behind {id}."),
        });
    }

    private static ReedSystem System(string id) => ReedSystem.Parse(id).Value;
}
