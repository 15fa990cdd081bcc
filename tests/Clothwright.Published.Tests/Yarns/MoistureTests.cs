using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Yarns;

public class MoistureTests
{
    public static TheoryData<CheckRow> Rows => CheckRow.All("moisture.md");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Moisture_changes_the_mass_as_published(CheckRow row)
    {
        double[] given = CheckRow.Numbers(row.Inputs);
        Dictionary<string, double> expected = CheckRow.Pairs(row.Expected);
        switch (row.Id)
        {
            case "YF-I01" or "YF-I02" or "YF-I03" or "YF-I09" or "YF-I11":
                row.Check(expected["g"], Agreed(given[0], Percent(given[1]), Percent(given[2])));
                break;
            case "YF-I04":
                row.Check(expected["content"], Moisture.ContentFromRegain(Percent(given[0])).Percent);
                break;
            case "YF-I05":
                row.Check(expected["regain"], Moisture.RegainFromContent(Percent(given[0])).Percent);
                break;
            case "YF-I06":
                Ratio blend = FibreBlend.Parse("cotton 60 %, viscose 40 %").Value.Regain(RegainBasis.Europe).Value;
                row.Check(expected["regain"], blend.Percent);
                row.Check(expected["content"], Moisture.ContentFromRegain(blend).Percent);
                break;
            case "YF-I07":
                Ratio agreed = FibreBlend.Parse("polyester 80 %, cotton 20 %").Value.Regain(RegainBasis.UnitedStates).Value;
                row.Check(expected["kg"], Agreed(given[0], Moisture.RegainFromContent(Percent(given[3])), agreed));
                break;
            case "YF-I08":
                StockLeft left = ConeOfCotton(given[0], Percent(given[3]));
                row.Check(expected["corrected_g"], left.AgreedMass.Value.Grams);
                row.Check(expected["length_m"], left.Length.Value.Metres);
                row.Check(CheckRow.Numbers(row.Expected)[^1], YarnCount.Parse("8/2", CountSystem.Cotton).Value.ToLinearDensity().Value.LengthOf(left.NetMass.Value).Metres);
                break;
            case "YF-I10":
                Ratio dried = Moisture.RegainByDrying(Mass.FromGrams(given[0]), Mass.FromGrams(given[1]));
                row.Check(expected["regain"], dried.Percent);
                row.Check(expected["content"], Moisture.ContentFromRegain(dried).Percent);
                break;
            default:
                Assert.Fail($"No check is written for {row.Id}.");
                break;
        }
    }

    private static StockLeft ConeOfCotton(double netGrams, Ratio actualRegain)
    {
        var yarn = new Yarn(
            "shingle",
            "8/2 cotton, shingle",
            YarnCount.Parse("8/2", CountSystem.Cotton).Value.ToLinearDensity(),
            FibreBlend.Pure(FibreCatalogue.Get("cotton")),
            YarnConstruction.Spun,
            new SrgbColour(180, 176, 168));
        var cone = new YarnPackage(PackageForm.Cone, Mass.FromGrams(netGrams + 32), Mass.FromGrams(32));
        return StockReckoning.Left(yarn, cone, Derived.Given("regain", actualRegain, Source.Measured), RegainBasis.UnitedStates);
    }

    private static double Agreed(double mass, Ratio actual, Ratio agreed) => Moisture.AgreedMass(
        Derived.Given("weighed", Mass.FromGrams(mass), Source.Measured),
        Derived.Given("actual", actual, Source.Measured),
        Derived.Given("agreed", agreed, Source.Measured)).Value.Grams;

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);
}
