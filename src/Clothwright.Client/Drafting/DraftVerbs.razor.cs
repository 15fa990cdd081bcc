using System.Globalization;
using Clothwright.Client.Sheet;
using Clothwright.Client.Texts;
using Clothwright.Core.Weaves.Editing;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Drafting;

/// <summary>What can be done to the marked threads, as sentences whose verbs do it.</summary>
public partial class DraftVerbs : ComponentBase
{
    private bool _open;
    private int _times = 1;
    private int _higher;
    private int _by = 1;
    private int _up = 1;
    private int _from = 1;
    private int? _to;
    private int _count = 1;
    private int _one = 1;
    private int _other = 2;

    [Inject]
    private Phrases Phrases { get; set; } = null!;

    [Inject]
    private Desk Desk { get; set; } = null!;

    /// <summary>The draft.</summary>
    [Parameter, EditorRequired]
    public DraftWork Work { get; set; } = null!;

    /// <summary>Called when something was done.</summary>
    [Parameter, EditorRequired]
    public Action Changed { get; set; } = null!;

    private DeskMarks Taken => Work.Taken;

    private DeskPart Part => Taken.Part;

    private bool Cells => Work.PartOf(Part) is not null;

    private string MarkedKey => Work.Marked is null ? "verbs.none" : Part == DeskPart.Cloth ? "verbs.cloth" : "verbs.some";

    private int Numbers => Math.Max(1, Work.Numbers(Part));

    /// <summary>The key of the word for a thread of a part.</summary>
    /// <param name="part">The part.</param>
    internal static string ThreadWord(DeskPart part) => part switch
    {
        DeskPart.TieUp => "thread.treadle",
        DeskPart.Treads or DeskPart.WeftColours => "thread.pick",
        _ => "thread.end",
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private void Act(Action verb)
    {
        verb();
        Changed();
    }

    private void Reorder(Func<ThreadSpan, LineEdit> edit) => Act(() => Work.Reorder(edit));

    private void Draw(bool pointed) => Act(() => Work.Change((draft, part, span) =>
        draft.Run(part, span, Math.Min(_from, Numbers), Math.Min(_to ?? Numbers, Numbers), pointed)));
}
