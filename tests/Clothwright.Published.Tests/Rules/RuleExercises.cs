using Clothwright.Core.Calibration;
using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Hand;
using Clothwright.Core.Cloths.Puckering;
using Clothwright.Core.Cloths.Stages;
using Clothwright.Core.Colours;
using Clothwright.Core.Looms;
using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Fitting;
using Clothwright.Core.Weaves.RigidHeddles;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.TestKit;
using Clothwright.TestKit.Photographs;

namespace Clothwright.Published.Tests.Rules;

/// <summary>Questions enough that every rule of the program answers once.</summary>
internal static class RuleExercises
{
    /// <summary>Name of the mass that an exercise asks for.</summary>
    public const string Needed = "needed";

    /// <summary>Name of the value before any swatch.</summary>
    public const string Charts = "as charts say";

    private static readonly Yarn Cotton = PublishedYarn.Of("cotton", CountSystem.Cotton, "8/2");

    private static readonly Yarn Wool = PublishedYarn.Of("wool-worsted", CountSystem.Metric, "4");

    private static readonly Yarn Hemp = PublishedYarn.Of("hemp", CountSystem.Linen, "16/2");

    private static readonly Drawdown Plain = WeaveOf("plain").Draft.Drawdown();

    private static readonly Drawdown Twill = WeaveOf("2/2 twill").Draft.Drawdown();

    /// <summary>Everything they show.</summary>
    public static RuleHarvest Harvest()
    {
        var harvest = new RuleHarvest();
        Yarns(harvest);
        Setts(harvest);
        Cloths(harvest);
        Weaves(harvest);
        Plans(harvest);
        Photographs(harvest);
        return harvest;
    }

    private static void Yarns(RuleHarvest harvest)
    {
        foreach (CountSystem system in Enum.GetValues<CountSystem>())
        {
            YarnCount count = YarnCount.Of(system, 20);
            harvest.Of(count.ToLinearDensity());
            if (YarnCount.Parse("20/2", system).TryGet(out YarnCount? folded)) harvest.Of(folded.ToLinearDensity(Derived.Decision("take-up in folding", Ratio.FromPercent(2))));
        }

        Derived<Ratio> two = Derived.Decision("extra length", Ratio.FromValue(1.2));
        harvest.Of(YarnSize.Parse("400 m / 100 g").Value)
            .Of(FoldedYarn.Together("folded", Cotton.LinearDensity, Wool.LinearDensity))
            .Of(FoldedYarn.LongerStrand(Cotton.LinearDensity, two))
            .Of(FoldedYarn.Contracted(Cotton.LinearDensity, Derived.Decision("take-up", Ratio.FromPercent(2))))
            .Of(YarnStrands.SideBySide(Cotton with { MeasuredWraps = Derived.Decision("wraps", Sett.FromPerInch(30)) }, 2))
            .Of(YarnIdentification.Identify(new YarnClues(Length.FromMetres(10), Mass.FromGrams(1.48))).Value)
            .Of(KnittingClasses.All)
            .Of(FibreComparison.OfEqualCount(Cotton.LinearDensity, FibreCatalogue.Get("cotton"), FibreCatalogue.Get("wool-worsted")));
        FibreBlend blend = FibreBlend.Parse("wool 80 %, silk 20 %").Value;
        harvest.Of(blend).Of(Moisture.RegainInRoom(blend, null)).Of(Moisture.RegainInRoom(blend, Ratio.FromPercent(50)));
        Yarn shelved = Cotton with { Packages = [new YarnPackage(PackageForm.Cone, Mass.FromGrams(300), Mass.FromGrams(40))] };
        var offer = new YarnOffer(PackageForm.Cone, Mass.FromGrams(250), Money.FromAmount(20));
        harvest.Of(StockReckoning.OnShelf(shelved)).Of(StockReckoning.LengthOnShelf(shelved))
            .Of(PackageReckoning.Choose(Derived.Given(Needed, Mass.FromGrams(600), Source.CommonPractice, 0.02), StockReckoning.OnShelf(shelved), offer))
            .Of(FreeStock.Of(StockReckoning.OnShelf(shelved), [("the next warp", Mass.FromGrams(120))]))
            .Of(PackageReckoning.Holding(Derived.Decision("length", Length.FromMetres(1240)), Length.FromMetres(100)));
    }

    private static void Setts(RuleHarvest harvest)
    {
        foreach (ClothPurpose purpose in Enum.GetValues<ClothPurpose>()) harvest.Of(SettAdvice.For(SettQuestion.About(Cotton, Twill, purpose)));
        foreach (string weave in (string[])["plain", "3/1 twill", "5-end satin", "8-end satin", "basket", "warp rib", "weft rib"]) harvest.Of(SettAdvice.For(SettQuestion.About(Cotton, WeaveOf(weave).Draft.Drawdown(), ClothPurpose.Everyday)));
        foreach (YarnConstruction made in Enum.GetValues<YarnConstruction>()) harvest.Of(SettAdvice.For(SettQuestion.About(Wool with { Construction = made }, Plain, ClothPurpose.Drape)));
        Yarn blended = Cotton with { Fibres = FibreBlend.Parse("wool 80 %, silk 20 %").Value };
        SettAdvice advice = SettAdvice.For(SettQuestion.About(blended, Plain, ClothPurpose.Drape, Hemp) with { Layers = 2, Width = Length.FromCentimetres(120), ToBeFulled = true });
        harvest.Of(advice).Of(advice.PicksBeside(Derived.Decision("ends", Sett.FromPerInch(10))));
        foreach (WrapMeasure measure in Enum.GetValues<WrapMeasure>())
        {
            harvest.Of(SettAdvice.For(SettQuestion.About(Cotton with { MeasuredWraps = Derived.Decision("wraps", Sett.FromPerInch(30)), WrapMeasure = measure }, Plain, ClothPurpose.Everyday)));
        }

        harvest.Of(SettAdvice.For(new SettQuestion { Warp = new ThreadSystem([Cotton, Wool], ThreadOrder.Of(0, 1)), Weft = ThreadSystem.Of(Cotton), Weave = Plain }))
            .Of(SettAdvice.For(SettQuestion.About(Cotton, Plain, ClothPurpose.Drape) with { LearnedShare = Learned(0.6) }))
            .Of(YarnComparison.Of(Cotton, Wool));
        foreach (Fibre fibre in FibreCatalogue.All) harvest.Of(AshenhurstK.Of(Cotton with { Fibres = FibreBlend.Pure(fibre) }));
    }

    private static void Cloths(RuleHarvest harvest)
    {
        ClothQuestion question = ClothQuestion.About(Cotton, Wool, Twill, Sett.FromPerInch(16), Sett.FromPerInch(14));
        foreach (CrimpSharing sharing in Enum.GetValues<CrimpSharing>())
        {
            ClothGeometry cloth = ClothGeometry.Of(question with { Sharing = sharing, MeasuredWarpCrimp = Derived.Decision("measured", Ratio.FromPercent(5)) });
            harvest.Of(cloth).Of(BendingBound.Of(cloth));
        }

        harvest.Of(ClothGeometry.Of(question with { LearnedWarpShare = Learned(0.5), LearnedWarpTakeUp = Learned(0.08), LearnedWeftTakeUp = Learned(0.07) }))
            .Of(ClothGeometry.Of(question with { Ends = Derived.Decision("ends", Sett.FromPerInch(60)) }))
            .Of(TaylorTakeUp.Of(question.Picks, Cotton.LinearDensity, 2))
            .Of(Core.Plans.Lengths.FinishingShrinkage.OfSample("sample", Derived.Decision("before", Length.FromCentimetres(10)), Derived.Decision("after", Length.FromCentimetres(9))))
            .Of(Core.Plans.Lengths.TakeUp.FromCrimp("take-up", Derived.Decision("crimp", Ratio.FromPercent(10))));
        foreach (double perInch in (double[])[29, 30])
        {
            harvest.Of(ClothStages.Of(new StagesQuestion { Warp = question.Warp, Weft = question.Weft, Weave = Plain, EndsInReed = Derived.Decision("ends", Sett.FromPerInch(perInch)), Picks = Derived.Decision("picks", Sett.FromPerInch(perInch)) }));
        }
        harvest.Of(ClothStages.Of(new StagesQuestion { Warp = question.Warp, Weft = question.Weft, Weave = Plain, EndsInReed = Derived.Decision("ends", Sett.FromPerInch(34)), Picks = Derived.Decision("picks", Sett.FromPerInch(5)) }));
        Yarn dark = Cotton with { Colour = new SrgbColour(0x10, 0x18, 0x20) };
        foreach (Drawdown weave in (Drawdown[])[Twill, WeaveOf("8-end satin").Draft.Drawdown()])
        {
            harvest.Of(PatternLegibility.Of(ClothGeometry.Of(question with { Weave = weave, Warp = ThreadSystem.Of(dark) }), front: true, Length.FromCentimetres(60)))
                .Of(ClothPuckering.Of(ClothStages.Of(new StagesQuestion { Warp = new ThreadSystem([Cotton, Wool], ThreadOrder.Of(0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1)), Weft = question.Weft, Weave = weave, EndsInReed = question.Ends, Picks = question.Picks })));
        }
        foreach (bool fulled in (bool[])[false, true])
        {
            var stages = ClothStages.Of(new StagesQuestion { Warp = new ThreadSystem([Cotton, Wool], ThreadOrder.Of(0, 1)), Weft = question.Weft, Weave = Twill, EndsInReed = question.Ends, Picks = question.Picks, ToBeFulled = fulled });
            harvest.Of(stages).Of(ClothPuckering.Of(stages));
        }
    }

    private static void Weaves(RuleHarvest harvest)
    {
        foreach (WeaveEntry entry in WeaveCatalogue.All) harvest.Of(WeaveOf(entry.Name).Rule);
        foreach (string name in (string[])["warp rib", "weft rib"]) harvest.Of(WeaveOf(name).Rule);
        Draft draft = WeaveOf("2/2 twill").Draft;
        foreach (ShedAction shed in Enum.GetValues<ShedAction>())
        {
            harvest.Of(LoomFit.For(draft, new LoomLimits(4, 6, 2, shed))).Of(LoomFit.For(draft, new LoomLimits(4, 6, 2, shed) { ShaftsPerEnd = 2 }));
        }

        // Six lifts on fewer treadles, pressed two at a time; ends of which one moves whenever either of two others does.
        Draft overshot = WeaveOf("overshot").Draft;
        string everyLift = string.Join('/', Enumerable.Range(0, 16).Select(lift => Convert.ToString(lift, 2).PadLeft(4, '0')));
        harvest.Of(LoomFit.For(overshot, new LoomLimits(4, 5, 2)))
            .Of(LoomFit.For(Drawdown.Parse(everyLift).Value, new LoomLimits(4, 8, 2, ShedAction.Countermarche)))
            .Of(LoomFit.For(Drawdown.Parse("101/011/000/101").Value, new LoomLimits(2, 4) { ShaftsPerEnd = 2 }))
            .Of(ColourAndWeave.Rule)
            .Of(ClaspedWarp.Of(Length.FromMetres(3), [Length.FromMetres(1), Length.FromMetres(2)], Length.FromMillimetres(2)).Value)
            .Of(ClaspedWeft.Rule);
        Derived<Sett> sett = Derived.Decision("ends", Sett.FromPerInch(10));
        harvest.Of(FloatAdvice.For(ClothFloats.Of(WeaveOf("8-end satin").Draft.Drawdown(), ClothReading.Repeat), FloatPurpose.Garment, sett, sett))
            .Of(FloatLength.Rule)
            .Of(RigidHeddleSett.Greatest(RigidHeddle.Parse("10-dent", 2).Value, 2, [1, 2, 3]));
    }

    private static void Plans(RuleHarvest harvest)
    {
        foreach (LoomKind kind in Enum.GetValues<LoomKind>())
        {
            Derived<Length> waste = LoomWaste.Customary(kind, 8, ShedAction.Countermarche);
            harvest.Of(waste).Of(LoomWaste.TiedOn(waste));
        }

        foreach (string file in Directory.GetFiles(Repository.PathOf("samples"), "*.json").Order(StringComparer.Ordinal))
        {
            PlanResult plan = WorksheetReader.Read(File.ReadAllBytes(file)).Value.Plan().Value;
            harvest.Of(plan);
            foreach (Core.Plans.Briefs.FringeStyle fringe in Enum.GetValues<Core.Plans.Briefs.FringeStyle>())
            {
                harvest.Of(WarpPlanner.Plan(plan.Request with
                {
                    Pieces = [.. plan.Request.Pieces.Select(p => p with { Fringe = fringe, FringeLength = Length.FromCentimetres(10), SideSeam = Length.FromCentimetres(1), Hem = Length.FromCentimetres(2), Fulled = fringe == Core.Plans.Briefs.FringeStyle.None })],
                    Allowances = plan.Request.Allowances with { WarpTakeUp = Ratio.FromPercent(8) },
                }));
            }
        }
    }

    private static void Photographs(RuleHarvest harvest)
    {
        var swatch = new SyntheticSwatch { Name = "swatch", EndsPerCentimetre = 9, PicksPerCentimetre = 7.5, Weave = ["1100", "0110", "0011", "1001"], PixelsPerMillimetre = 9, Side = 480, Seed = 11 };
        Photograph cloth = Photograph.FromRgba(swatch.Side, swatch.Side, SwatchPainter.Rgba(swatch));
        SyntheticSwatch rod = RodPainter.Rod(12, cover: 0.97);
        Photograph wraps = Photograph.FromRgba(rod.Side, rod.Side, RodPainter.Rgba(rod));
        // A dark piece of 300 × 240 on a pale ground.
        byte[] piece = [.. Enumerable.Range(0, 500 * 400).SelectMany(at => Enumerable.Repeat((byte)(at % 500 is >= 100 and < 400 && at / 500 is >= 80 and < 320 ? 90 : 210), 4))];
        harvest.Of(ClothCounter.Count(cloth, PhotoScale.FromLength(Length.FromMillimetres(50), 450), PhotoArea.MiddleOf(cloth), CountDetail.Full).Value)
            .Of(WrapCounter.Count(wraps, PhotoScale.FromLength(Length.FromMillimetres(50), 50 * rod.PixelsPerMillimetre), new PhotoBand(new PhotoPoint(40, 300), new PhotoPoint(560, 300), 60)).Value)
            .Of(PieceMeasure.Measure(Photograph.FromRgba(500, 400, piece), PhotoScale.FromLength(Length.FromMillimetres(50), 50), new PhotoPoint(250, 200)).Value);
    }

    private static LearnedValue Learned(double value) => LearnedValue.From(
        Derived.FromRange(Charts, Ratio.FromValue(value * 0.9), Ratio.FromValue(value * 1.1), Source.CommonPractice), [Ratio.FromValue(value), Ratio.FromValue(value * 1.02)]);

    private static Weave WeaveOf(string name) => WeaveCatalogue.Make(name).Value;
}
