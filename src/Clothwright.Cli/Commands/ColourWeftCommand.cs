using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.WeftChoice;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright colour weft</c>: which weft from the shelf serves a warp best.</summary>
internal sealed class ColourWeftCommand : ReportCommand
{
    private readonly Argument<string> _worksheet = new("worksheet") { Description = "The worksheet file." };
    private readonly Option<string> _aim = new("--aim") { Description = "clear (the pattern shows best), shimmer (the colour moves most), or the colour that the face is to have from afar, for example #3b7a78.", DefaultValueFactory = _ => "clear" };
    private readonly Option<int> _piece = new("--piece") { Description = "Which piece, counted from 1.", DefaultValueFactory = _ => 1 };
    private readonly Option<bool> _pairs = new("--pairs") { Description = "Look at two yarns pick by pick in turn too." };
    private readonly Option<int> _most = new("--most") { Description = "How many are told at most.", DefaultValueFactory = _ => 6 };

    /// <summary>The command.</summary>
    public ColourWeftCommand()
        : base("weft", "Which weft from the worksheet's shelf serves its warp best: for a clear pattern, for shimmer, for a colour.")
    {
        Arguments.Add(_worksheet);
        Options.Add(_aim);
        Options.Add(_piece);
        Options.Add(_pairs);
        Options.Add(_most);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        WeftAim aim = WeftAim.Parse(input.GetValue(_aim)!).At("--aim");
        int most = input.GetValue(_most);
        if (most < 1) throw new InputProblemException(new InputProblem($"{most} wefts cannot be told.", "--most", "Give 1 or more, for example 6."));
        PlanResult plan = WorksheetFile.Plan(input.GetValue(_worksheet)!).Plan;
        int piece = input.GetValue(_piece);
        if (piece < 1 || piece > plan.Pieces.Length)
        {
            throw new InputProblemException(new InputProblem($"There is no piece {piece}.", "--piece", $"Give a number from 1 to {plan.Pieces.Length}."));
        }

        ImmutableArray<WeftProposal> proposals = WeftChooser.Propose(plan, piece - 1, aim, most, input.GetValue(_pairs));
        return new Report(Text(plan, piece - 1, aim, proposals), Json(aim, proposals));
    }

    private static string Text(PlanResult plan, int piece, WeftAim aim, ImmutableArray<WeftProposal> proposals)
    {
        var text = new StringBuilder();
        string wanted = aim.Kind switch { WeftAimKind.Clear => "the clearest pattern", WeftAimKind.Shimmer => "the most shimmer", _ => $"a face of {aim.Wanted}" };
        text.AppendLine($"Wefts from the shelf for {plan.Pieces[piece].Piece.Name}, for {wanted}, the best first:");
        for (int i = 0; i < proposals.Length; i++)
        {
            WeftProposal proposal = proposals[i];
            text.AppendLine($"{i + 1}  {Names(proposal)}{(proposal.IsPresent ? " (as planned now)" : "")}: face {proposal.Colours.Face.Colour.ToSrgb()}, back {proposal.Colours.Back.Colour.ToSrgb()}");
            WrappedText.Append(text, string.Join(' ', proposal.Reasons), "   ", "   ");
        }

        if (aim.Wanted is { } face)
        {
            var wanting = WantedWeft.For(plan.Pieces[piece], face);
            WrappedText.Append(text, wanting.IsReachable
                ? $"In this weave and sett the wanted face asks for a weft of {wanting.Light.ToSrgb()}, {ColourWords.Of(wanting.Light)}."
                : "In this weave and sett no weft of any colour gives the wanted face over this warp; these come nearest.", "", "");
        }

        text.Append("Colours are those under even light; judge them on a sample.");
        return text.ToString();
    }

    private static string Names(WeftProposal proposal) => string.Join(" and ", proposal.Yarns.Select(y => y.Name));

    private static JsonObject Json(WeftAim aim, ImmutableArray<WeftProposal> proposals) => new()
    {
        ["aim"] = aim.Wanted?.ToString() ?? aim.Kind.ToString().ToLower(CultureInfo.InvariantCulture),
        ["proposals"] = new JsonArray([.. proposals.Select(p => (JsonNode)new JsonObject
        {
            ["yarns"] = new JsonArray([.. p.Yarns.Select(y => (JsonNode)y.Id)]),
            ["presentWeft"] = p.IsPresent,
            ["faceColour"] = p.Colours.Face.Colour.ToSrgb().ToString(),
            ["backColour"] = p.Colours.Back.Colour.ToSrgb().ToString(),
            ["faceDeltaE2000"] = p.FaceDifference,
            ["noticedDifferences"] = p.Legibility.NoticedDifferences.Value.Value,
            ["pattern"] = p.Legibility.Words,
            ["shimmerDeltaE2000"] = p.Shimmer.Value.Value,
            ["weftDiameterMillimetres"] = p.Piece.Cloth.Washed.WeftDiameter.Value.Millimetres,
            ["gramsShort"] = p.Short.Grams,
            ["reasons"] = new JsonArray([.. p.Reasons.Select(r => (JsonNode)r)]),
        })]),
    };
}
