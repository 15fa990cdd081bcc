using System.Collections.Immutable;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Wordings;

namespace Clothwright.Core.Publishing;

public sealed partial record Handout
{
    /// <summary>The language in which it is written; whoever draws it tells their own words and the workings in it too.</summary>
    public Wording Wording { get; init; } = Wording.English;

    /// <summary>The same handout in another language: its title, its maker's words and the names of yarns stay as they were given.</summary>
    /// <param name="wording">The language.</param>
    public Handout In(Wording wording)
    {
        ArgumentNullException.ThrowIfNull(wording);
        return this with
        {
            Wording = wording,
            Makes = wording.Tell(Makes),
            Sections = [.. Sections.Select(s => s with { Heading = wording.Tell(s.Heading), Blocks = [.. s.Blocks.Select(b => Told(b, wording))] })],
        };
    }

    private static HandoutBlock Told(HandoutBlock block, Wording wording) => block switch
    {
        ParagraphBlock paragraph => paragraph.IsGiven ? paragraph : new ParagraphBlock(wording.Tell(paragraph.Text)),
        CautionsBlock cautions => new CautionsBlock(All(cautions.Cautions, wording)),
        ClothBlock cloth => cloth with { Caption = wording.Tell(cloth.Caption) },
        DraftBlock draft => draft with { Caption = wording.Tell(draft.Caption) },
        FiguresBlock figures => new FiguresBlock([.. figures.Figures.Select(f => Told(f, wording))]),
        MeasureBarBlock bar => new MeasureBarBlock(wording.Tell(bar.Text)),
        SettScaleBlock scale => scale with { Stops = Told(scale.Stops, wording), Limits = Told(scale.Limits, wording) },
        StepsBlock steps => new StepsBlock([.. steps.Steps.Select(s => Told(s, wording))]),
        TableBlock table => new TableBlock([.. table.Columns.Select(c => c with { Heading = wording.Tell(c.Heading) })], [.. table.Rows.Select(r => r with { Cells = All(r.Cells, wording) })]),
        WarpStripBlock strip => new WarpStripBlock([.. strip.Parts.Select(p => p with { Name = wording.Tell(p.Name) })]),
        WorkingsBlock workings => new WorkingsBlock([.. workings.Groups.Select(g => g with { Heading = wording.Tell(g.Heading) })]),
        _ => block,
    };

    private static HandoutFigure Told(HandoutFigure figure, Wording wording) =>
        new(wording.Tell(figure.Label), wording.Tell(figure.Metric), wording.Tell(figure.Customary)) { Note = wording.Tell(figure.Note) };

    private static HandoutStep Told(HandoutStep step, Wording wording) => new(wording.Tell(step.Title), wording.Tell(step.Text))
    {
        Details = All(step.Details, wording),
        Ticks = [.. step.Ticks.Select(t => new TickRow(wording.Tell(t.Caption), All(t.Marks, wording)))],
    };

    private static ImmutableArray<SettStop> Told(ImmutableArray<SettStop> stops, Wording wording) => [.. stops.Select(s => s with { Name = wording.Tell(s.Name) })];

    private static ImmutableArray<string> All(ImmutableArray<string> texts, Wording wording) => [.. texts.Select(wording.Tell)];
}
