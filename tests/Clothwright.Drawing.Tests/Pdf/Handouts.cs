using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;

namespace Clothwright.Drawing.Tests.Pdf;

/// <summary>Handouts to print.</summary>
internal static class Handouts
{
    private const string Winding = "Wind the warp in one chain with a cross at one end. Tie the cross, and tie the warp firmly every metre before you take it off.";

    /// <summary>A handout with a block of every kind.</summary>
    public static Handout ReedbedScarves()
    {
        Derived<Length> warpLength = Derived.From<Length>(
            "warp length",
            new Rule("warp length", "pieces + loom waste", Source.Derivation),
            Derived.FromRange("pieces", Length.FromCentimetres(390), Length.FromCentimetres(420), Source.CommonPractice),
            Derived.Decision("loom waste", Length.FromCentimetres(60)),
            (pieces, waste) => pieces + waste);
        LookDescription cloth = Pictures.Cloth(Pictures.Twill(4, 4).Drawdown(), 8.8, 0.7) with { Width = Length.FromCentimetres(21) };
        return new Handout("Two reedbed scarves", "Two scarves of 21 × 180 cm with twisted fringe, in 2/2 twill.",
        [
            new("At a glance",
            [
                new FiguresBlock([HandoutFigure.Of("Warp length", warpLength), new("Ends", "184", "184") { Note = "45 × 4 + 2 floating" }]),
                new ClothBlock(cloth, "The washed cloth at true size."),
                new MeasureBarBlock("Lay a rule on the bar."),
            ]),
            new("Sett and reed", [Scale("10-dent, 2 a dent", "Ashenhurst, ends plus intersections")]),
            new("Materials",
            [
                new TableBlock(
                    [new("Yarn"), new("Warp", true), new("Weft", true), new("Mass", true)],
                    [new(["8/2 bamboo, tide blue", "856 m", "–", "127 g"], Pictures.TideBlue), new(["8/2 bamboo, saltmarsh", "–", "780 m", "116 g"], Pictures.Saltmarsh)]),
            ]),
            new("Draft", [new DraftBlock(Pictures.Twill(184, 1200), [Pictures.TideBlue], [Pictures.Saltmarsh], "The repeat is 4 ends by 4 picks.")]),
            new("Warp colour order",
            [
                new WindingBlock([.. Enumerable.Range(0, 9).SelectMany(i => new[]
                {
                    new WindingTurn(1 + i * 20, 14, "tide blue", Pictures.TideBlue), new WindingTurn(15 + i * 20, 6, "dry sand", Pictures.DrySand),
                }), new WindingTurn(181, 4, "tide blue", Pictures.TideBlue)]),
            ]),
            new("The warp, front to back", [new WarpStripBlock([new("first scarf", WarpPartUse.Piece, Length.FromCentimetres(200)), new("behind", WarpPartUse.LoomWaste, Length.FromCentimetres(60))])]),
            new("Cautions", [new CautionsBlock(["A fringe on a piece for a small child can come off and be swallowed; local codes come first."])]),
            new("Step by step", [new StepsBlock([new("Wind", Winding) { Details = ["tide blue: 130 ends", "dry sand: 54 ends"] }, new("Thread", "Thread 1 to 4, 46 times.") { Ticks = [new("Tick every 4 repeats.", ["17", "33", "49"])] }]), new ParagraphBlock("The rest is patience.")]),
            new("Measure and write down", [new TableBlock([new("What"), new("Found") { IsBlank = true }], [new(["Width washed", ""])])]),
            new("Workings", [new WorkingsBlock([new("The whole warp", [warpLength.Working]), new("First scarf", [warpLength.Working])])]) { StartsPage = true },
        ])
        { Author = "Saltmarsh Studio", Edition = "edition 3" };
    }

    private static SettScaleBlock Scale(string reed, string method) => new(
        "drape",
        Sett.FromPerCentimetre(6.8),
        Sett.FromPerCentimetre(8.8),
        Sett.FromPerCentimetre(7.8),
        Sett.FromPerInch(20),
        [new(reed, Sett.FromPerInch(20)) { IsChosen = true }, new("12-dent, 1-2-2 a dent", Sett.FromPerInch(20)) { MarksLikely = true }],
        [new(method, Sett.FromPerCentimetre(14))]);

    /// <summary>A handout that runs over many pages.</summary>
    public static Handout Long(int paragraphs) => new(
        "A long one", "Many words.", [new("Words", [.. Enumerable.Range(1, paragraphs).Select(i => new ParagraphBlock($"Paragraph {i}. {Winding} {Winding}"))])]);

    /// <summary>A handout in which every text is hostile.</summary>
    public static Handout Hostile(string text)
    {
        ThreadLook thread = new(Pictures.TideBlue, Length.FromMillimetres(0.5));
        Draft draft = Pictures.Twill(8, 8) with { Name = text };
        return new Handout(text, text,
        [
            new(text,
            [
                new ParagraphBlock(text),
                new FiguresBlock([new(text, text, text) { Note = text }]),
                new TableBlock([new(text), new(text, true)], [new([text, text], Pictures.DrySand)]),
                new DraftBlock(draft, [], [], text),
                new ClothBlock(new LookDescription(draft.Drawdown(), [thread], [thread], Sett.FromPerCentimetre(10), Sett.FromPerCentimetre(10)), text),
                new WindingBlock([new(1, 8, text, Pictures.TideBlue)]),
                new WarpStripBlock([new(text, WarpPartUse.Piece, Length.FromCentimetres(100))]),
                new StepsBlock([new(text, text) { Details = [text], Ticks = [new(text, [text, text])] }]),
                new MeasureBarBlock(text),
                Scale(text, text),
                new TableBlock([new(text), new(text) { IsBlank = true }], [new([text, ""])]),
                new CautionsBlock([text]),
                new WorkingsBlock([new(text, [Derived.Given(text, Length.FromMetres(1), Source.Published(text)).Working])]),
            ]),
        ])
        { Author = text, Edition = text };
    }
}
