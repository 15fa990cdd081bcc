using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Csv;

/// <summary>Gathers a draft from the rows of its table.</summary>
internal sealed class DraftTableReader(ReadingLimits limits)
{
    private readonly DraftTableList _ends = new("end", limits.MaxEnds, limits.MaxShafts);
    private readonly DraftTableList _treadles = new("treadle", limits.MaxTreadles, limits.MaxShafts);
    private readonly DraftTableList _picks = new("pick", limits.MaxPicks, limits.MaxTreadles);
    private readonly DraftTableList _lifts = new("lift", limits.MaxPicks, limits.MaxShafts);
    private string _name = "";
    private int? _shafts;
    private bool _rising = true;

    public void Take(CsvCells row)
    {
        string part = row.Text(DraftTable.Part).ToLowerInvariant();
        switch (part)
        {
            case "name":
                _name = row.Text(DraftTable.Value);
                break;
            case "shafts":
                _shafts = row.Whole(DraftTable.Value, 1, Math.Min(limits.MaxShafts, DraftLimits.Shafts));
                break;
            case "shed":
                _rising = Shed(row);
                break;
            case "end":
                _ends.Take(row);
                break;
            case "treadle":
                _treadles.Take(row);
                break;
            case "pick":
                _picks.Take(row);
                break;
            case "lift":
                _lifts.Take(row);
                break;
            default:
                throw row.Problem(DraftTable.Part, $"\"{part}\" is no part of a draft.", "Use name, shafts, shed, end, treadle, pick or lift.");
        }
    }

    public Parsed<WovenDraft> Draft()
    {
        if ((long)_ends.Count * Math.Max(_picks.Count, _lifts.Count) > limits.MaxCrossings)
        {
            return new InputProblem($"{_ends.Count} ends cross the picks more than {limits.MaxCrossings} times.", "table", "Give one repeat of the draft.");
        }

        int used = Math.Max(_ends.HighestMember, Math.Max(_treadles.HighestMember, _lifts.HighestMember));
        var draft = new Draft
        {
            Name = _name,
            Shafts = _shafts ?? Math.Max(1, used),
            RisingShed = _rising,
            Threading = _ends.Sets(),
            TieUp = _treadles.Sets(),
            Treadling = _picks.Sets(),
            LiftPlan = _lifts.Sets(),
        };
        Parsed<Draft> sound = DraftCheck.Checked(draft);
        if (!sound.Succeeded) return sound.Problem;
        DraftTableList weft = _picks.Count > 0 ? _picks : _lifts;
        return new WovenDraft(draft, _ends.Threads(), weft.Threads());
    }

    private static bool Shed(CsvCells row) => row.Text(DraftTable.Value).ToLowerInvariant() switch
    {
        "rising" => true,
        "sinking" => false,
        var other => throw row.Problem(DraftTable.Value, $"\"{other}\" is no way a shed opens.", "Write rising or sinking."),
    };
}
