using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Tests.Publishing;

public class HandoutComposerTests
{
    private static IEnumerable<T> Blocks<T>(Handout handout) => handout.Sections.SelectMany(s => s.Blocks).OfType<T>();

    private static HandoutStep Step(Handout handout, string title) =>
        Blocks<StepsBlock>(handout).Single().Steps.Single(s => s.Title.StartsWith(title, StringComparison.Ordinal));

    private static string[] Titles(Handout handout) => [.. Blocks<StepsBlock>(handout).Single().Steps.Select(s => s.Title)];

    [Fact]
    public void The_steps_follow_the_order_of_the_work()
    {
        Handout handout = HandoutComposer.Compose(Plans.Scarves());

        Assert.Equal(
            ["Wind", "Beam", "Thread", "Sley", "Tie on", "Weave the header", "Weave the sample", "Weave: first scarf", "Weave: second scarf", "Cut off", "Mend", "Twist the fringe", "Wash"],
            Titles(handout));
    }

    [Fact]
    public void The_handout_says_what_it_makes()
    {
        Handout handout = HandoutComposer.Compose(Plans.Scarves(), new HandoutOptions { Author = "Saltmarsh Studio", Edition = "edition 2" });

        Assert.Equal("Two reedbed scarves", handout.Title);
        Assert.Equal("Two scarves of 21 × 180 cm (8.3 × 70.9 in) with twisted fringe, in 2/2 twill, on table loom.", handout.Makes);
        Assert.Equal(("Saltmarsh Studio", "edition 2"), (handout.Author, handout.Edition));
    }

    [Fact]
    public void Levers_are_lifted_by_a_lift_plan_and_treadles_are_tied()
    {
        Handout table = HandoutComposer.Compose(Plans.Scarves());
        Handout floor = HandoutComposer.Compose(Plans.Scarves(w => w with { LoomId = "floor" }));

        Assert.False(Blocks<DraftBlock>(table).Single().Draft.LiftPlan.IsEmpty);
        Assert.DoesNotContain("Tie up", Titles(table));
        Draft treadled = Blocks<DraftBlock>(floor).Single().Draft;
        Assert.True(treadled.LiftPlan.IsEmpty);
        Assert.Equal(4, Step(floor, "Tie up").Details.Length);
        Assert.Equal("Treadle 1: shafts " + string.Join(" and ", treadled.TieUp[0].Members()), Step(floor, "Tie up").Details[0]);
    }

    [Fact]
    public void The_draft_holds_every_end_and_weaves_what_was_planned()
    {
        PlanResult plan = Plans.Scarves();
        DraftBlock block = Blocks<DraftBlock>(HandoutComposer.Compose(plan)).Single();

        Assert.Equal(plan.Ends.Total.Value.Count, block.Draft.Ends);
        Assert.Equal(block.Draft.Ends, block.EndColours.Length);
        Assert.Equal(ShaftSet.None, block.Draft.Threading[0]);
        Assert.Equal(ShaftSet.None, block.Draft.Threading[^1]);
        Assert.Equal(plan.LoomDraft.Threading[0], block.Draft.Threading[1]);
        Drawdown wanted = plan.LoomDraft.Drawdown();
        Drawdown drawn = block.Draft.Drawdown();
        Assert.All(Enumerable.Range(0, 16), i => Assert.Equal(wanted[i / 4, i % 4], drawn[i / 4, i % 4 + 1]));
    }

    [Fact]
    public void Selvedge_ends_carry_the_threading_on_at_both_sides()
    {
        PlanResult plan = Plans.Scarves(w => w with { FloatingSelvedges = false, SelvedgeEnds = 3 });
        Draft draft = Blocks<DraftBlock>(HandoutComposer.Compose(plan)).Single().Draft;

        Assert.Equal([2, 3, 4, 1], draft.Threading.Take(4).Select(t => t.Max));
        int last = draft.Threading[^4].Max;
        Assert.Equal([last % 4 + 1, (last + 1) % 4 + 1, (last + 2) % 4 + 1], draft.Threading.TakeLast(3).Select(t => t.Max));
    }

    [Fact]
    public void Each_cloth_that_differs_is_shown_once()
    {
        Assert.Equal(2, Blocks<ClothBlock>(HandoutComposer.Compose(Plans.Scarves())).Count());
        PlanResult alike = Plans.Scarves(w => w with { Pieces = [Plans.Scarf("one", "marsh"), Plans.Scarf("other", "marsh")] });
        Assert.Single(Blocks<ClothBlock>(HandoutComposer.Compose(alike)));
    }

    [Fact]
    public void The_cloth_shown_has_the_threads_of_the_washed_piece()
    {
        PlanResult plan = Plans.Scarves();
        LookDescription look = Blocks<ClothBlock>(HandoutComposer.Compose(plan)).First().Cloth;

        Assert.Equal(plan.Ends.Total.Value.Count / plan.Pieces[0].FinishedWidth.Value.Metres, look.EndSett.PerMetre, 6);
        Assert.Equal(plan.Pieces[0].Picks.Value.Count / plan.Pieces[0].ClothLength.Value.Metres, look.PickSett.PerMetre, 6);
        Assert.Equal("#7d8545", look.Picks.Single().Colour.ToString());
    }

    [Fact]
    public void A_weft_of_two_strands_lies_twice_as_wide_and_is_said()
    {
        PlanResult plan = Plans.Scarves(w => w with { Pieces = [Plans.Scarf("scarf", "marsh", 2)] });
        Handout handout = HandoutComposer.Compose(plan);
        LookDescription look = Blocks<ClothBlock>(handout).Single().Cloth;

        Assert.Equal(2 * look.Ends[0].Width.Metres, look.Picks[0].Width.Metres, 9);
        Assert.Contains("Weft: 8/2 bamboo, saltmarsh, two strands together.", Step(handout, "Weave: scarf").Details);
    }

    [Fact]
    public void Materials_hold_every_yarn_with_what_suffices_in_95_of_100_cases()
    {
        PlanResult plan = Plans.Scarves();
        TableBlock materials = (TableBlock)HandoutComposer.Compose(plan).Sections.Single(s => s.Heading == "Materials").Blocks[0];

        Assert.Equal(plan.Yarns.Select(y => y.Yarn.Name), materials.Rows.Select(r => r.Cells[0]));
        int ready = materials.Columns.IndexOf(materials.Columns.Single(c => c.Heading == "Have ready"));
        Assert.Equal(
            plan.Yarns.Select(y => QuantityText.Format(QuantityKind.Mass, y.Mass.Upper95.Kilograms, UnitStyle.Metric)),
            materials.Rows.Select(r => r.Cells[ready]));
        Assert.All(materials.Rows, r => Assert.Equal(materials.Columns.Length, r.Cells.Length));
    }

    [Fact]
    public void The_winding_order_counts_every_end_once()
    {
        PlanResult plan = Plans.Scarves(w => w with { Warp = new WarpOrder([new ThreadRun("tide", 14), new ThreadRun("marsh", 6)]) });
        WindingBlock winding = Blocks<WindingBlock>(HandoutComposer.Compose(plan)).Single();

        Assert.Equal(1, winding.Turns[0].FirstEnd);
        Assert.All(winding.Turns.Zip(winding.Turns.Skip(1)), t => Assert.Equal(t.First.LastEnd + 1, t.Second.FirstEnd));
        Assert.Equal(plan.Ends.Total.Value.Count, winding.Turns[^1].LastEnd);
    }

    [Fact]
    public void The_strip_is_as_long_as_the_warp()
    {
        PlanResult plan = Plans.Scarves();

        Assert.Equal(plan.WarpLength.Value.Metres, Blocks<WarpStripBlock>(HandoutComposer.Compose(plan)).Single().Parts.Sum(p => p.Length.Metres), 6);
    }

    [Fact]
    public void Every_figure_of_the_plan_is_worked_in_the_appendix()
    {
        PlanResult plan = Plans.Scarves();

        Assert.Equal(plan.Figures.All.Select(f => f.Value.Working), Blocks<WorkingsBlock>(HandoutComposer.Compose(plan)).Single().Workings);
        Assert.Empty(Blocks<WorkingsBlock>(HandoutComposer.Compose(plan, new HandoutOptions { Workings = false })));
    }

    [Fact]
    public void Every_caution_and_warning_of_the_plan_is_said()
    {
        PlanResult plan = Plans.Scarves(w => w with { Pieces = Plans.Only(Plans.Scarf("scarf", "marsh"), p => p with { Wearer = Wearer.Baby }) });
        Handout handout = HandoutComposer.Compose(plan);

        Assert.NotEmpty(plan.Cautions);
        Assert.Equal(plan.Cautions.Select(c => c.Text).Distinct(), Blocks<CautionsBlock>(handout).Single().Cautions);
        string paragraphs = string.Join('\n', Blocks<ParagraphBlock>(handout).Select(p => p.Text));
        Assert.All(plan.Warnings, w => Assert.Contains(w.Advice, paragraphs, StringComparison.Ordinal));
    }

    [Fact]
    public void Prices_are_said_in_the_currency_or_not_at_all()
    {
        PlanResult plan = Plans.Scarves(w => w with
        {
            Shelf = [.. w.Shelf.Select(y => y with { Offer = new Clothwright.Core.Yarns.YarnOffer(Clothwright.Core.Yarns.PackageForm.Cone, Mass.FromGrams(227), Money.FromAmount(14.5)) })],
        });

        Assert.Contains(Blocks<FiguresBlock>(HandoutComposer.Compose(plan, new HandoutOptions { Currency = "EUR" })).Single().Figures, f => f.Metric.EndsWith(" EUR", StringComparison.Ordinal));
        Assert.DoesNotContain(Blocks<FiguresBlock>(HandoutComposer.Compose(plan)).Single().Figures, f => f.Label.StartsWith("Yarn used", StringComparison.Ordinal));
    }

    [Fact]
    public void A_blanket_in_two_layers_on_rigid_heddles_says_how_to_keep_them_apart()
    {
        PlanResult plan = Plans.Scarves(w => w with
        {
            LoomId = "rigid",
            Weave = new WeaveDecision.Named("plain weave"),
            Sett = Sett.FromPerInch(10),
            FloatingSelvedges = false,
            Pieces = Plans.Only(Plans.Scarf("blanket", "marsh"), p => p with { Kind = PieceKind.Blanket, Make = PieceMake.DoubleWidth, Width = Length.FromCentimetres(100) }),
        });
        Handout handout = HandoutComposer.Compose(plan);

        Assert.Contains("woven double width in two layers", handout.Makes, StringComparison.Ordinal);
        Assert.Contains("Thread two heddles", Step(handout, "Thread the heddle").Text, StringComparison.Ordinal);
        Assert.Contains(Step(handout, "Weave: blanket").Details, d => d.StartsWith("Two layers with a fold", StringComparison.Ordinal));
        LookDescription look = Blocks<ClothBlock>(handout).Single().Cloth;
        Assert.Equal(plan.Pieces[0].Picks.Value.Count / 2.0 / plan.Pieces[0].ClothLength.Value.Metres, look.PickSett.PerMetre, 6);
    }

    [Fact]
    public void A_twill_of_three_shafts_asks_for_two_rigid_heddles()
    {
        PlanResult plan = Plans.Scarves(w => w with { LoomId = "rigid", Weave = new WeaveDecision.Named("2/1 twill"), Sett = Sett.FromPerInch(10) });
        Handout handout = HandoutComposer.Compose(plan);
        TableBlock tools = (TableBlock)handout.Sections.Single(s => s.Heading == "Tools").Blocks[0];

        Assert.StartsWith("Two of 10-dent heddle, each end in an eye of one", tools.Rows.Single(r => r.Cells[0] == "Rigid heddles").Cells[1], StringComparison.Ordinal);
        Assert.Contains("Thread two heddles", Step(handout, "Thread the heddle").Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(RingJoin.Plain, "Sew the ends together, face to face")]
    [InlineData(RingJoin.HalfTwist, "Turn one end over by half a turn")]
    public void A_ring_is_joined_after_washing(RingJoin join, string words)
    {
        PlanResult plan = Plans.Scarves(w => w with
        {
            Pieces = Plans.Only(Plans.Scarf("cowl", "marsh"), p => p with { Kind = PieceKind.Cowl, Fringe = FringeStyle.None, FringeLength = Length.Zero, Join = join }),
        });
        Handout handout = HandoutComposer.Compose(plan);

        Assert.Contains(words, Step(handout, "Join: cowl").Text, StringComparison.Ordinal);
        Assert.True(Titles(handout).ToList().IndexOf("Join: cowl") > Titles(handout).ToList().IndexOf("Wash"));
    }

    [Fact]
    public void Clasped_and_hemmed_pieces_say_so()
    {
        PlanResult plan = Plans.Scarves(w => w with
        {
            Pieces = Plans.Only(Plans.Scarf("towel", "marsh"), p => p with
            {
                Kind = PieceKind.Towel,
                Count = 4,
                Fringe = FringeStyle.None,
                FringeLength = Length.Zero,
                Hem = Length.FromCentimetres(4),
                Weft = [new WeftRun("marsh", 1) { ClaspedWith = "tide" }],
            }),
        });
        Handout handout = HandoutComposer.Compose(plan);

        Assert.Contains("Four towels", handout.Makes, StringComparison.Ordinal);
        Assert.Contains("four of them alike", Step(handout, "Weave: towel").Text, StringComparison.Ordinal);
        Assert.Contains(Step(handout, "Weave: towel").Details, d => d.Contains("clasped with 8/2 bamboo, tide blue", StringComparison.Ordinal));
        Assert.Contains("Hem", Titles(handout));
    }
}
