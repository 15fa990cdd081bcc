using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Editing;

namespace Clothwright.Client.Drafting;

/// <content>What is the matter with the draft: looked for after the picture is painted, once for each draft.</content>
public partial class DraftDesk
{
    // A repeat with more crossings is looked over when the hand has rested.
    private const long Large = 100_000;
    private const int RestMilliseconds = 250;

    private ImmutableArray<Trouble> _troubles = [];
    private FloatAllowance _allowed = new(1, 1);
    private bool _looking;
    private (Draft Draft, FloatAllowance Allowed, bool Floating)? _looked;

    private async Task LookOverAsync()
    {
        var wanted = (_work.Draft, Allowance(), Worksheet.FloatingSelvedges);
        if (Same(_looked, wanted)) return;
        _looked = wanted;
        _looking = true;
        await PageScript.AfterPaintAsync();
        if ((long)wanted.Draft.Ends * wanted.Draft.Picks > Large) await Task.Delay(RestMilliseconds);
        if (!Same(_looked, wanted) || !ReferenceEquals(_work.Draft, wanted.Draft)) return;
        int layers = Plan.Request.Weave.Layers;
        _allowed = wanted.Item2;
        _troubles =
        [
            .. Troubles.Of(wanted.Draft, wanted.Item2, Shuttles(), layers)
                .Where(t => !wanted.FloatingSelvedges || t.Kind is not (TroubleKind.LooseTurn or TroubleKind.SameShed)),
        ];
        _looking = false;
        StateHasChanged();
    }

    private static bool Same((Draft Draft, FloatAllowance Allowed, bool Floating)? one, (Draft Draft, FloatAllowance Allowed, bool Floating) other) =>
        one is { } looked && ReferenceEquals(looked.Draft, other.Draft) && looked.Allowed == other.Allowed && looked.Floating == other.Floating;

    private FloatAllowance Allowance() =>
        FloatAllowance.For(FloatRules.For(_work.Entry.Piece.FloatPurpose()), Plan.Sett.Value, Plan.Pieces[0].GroundPicks.Value);

    // A pattern weft has a shuttle of its own.
    private ThreadOrder Shuttles() => _work.Weave.HasPatternPicks
        ? ThreadOrder.Of([.. _work.Weave.PickRoles.Select(r => r == Core.Weaves.Structures.ThreadRole.Pattern ? 1 : 0)])
        : ThreadOrder.OneYarn;
}
