using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Client.Texts;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Joining;

namespace Clothwright.Client.Sheet;

/// <summary>Says in words what a part of a worksheet holds, so that two of them can be told apart.</summary>
/// <param name="phrases">The texts.</param>
/// <param name="sheet">The worksheet.</param>
/// <param name="units">Units in which she reads.</param>
internal sealed class PartWords(Phrases phrases, Worksheet sheet, UnitStyle units)
{
    /// <summary>What a part holds, a line for each thing in it.</summary>
    public ImmutableArray<string> Of(WorksheetPart part) => part switch
    {
        WorksheetPart.Title => [sheet.Title, .. Some(sheet.Note)],
        WorksheetPart.Units => [phrases.Word(sheet.Units)],
        WorksheetPart.Looms => [LoomName, .. sheet.Looms.Select(l => $"{l.Name}, {Text(l.WeavingWidth)}"), .. sheet.Reeds.Select(r => r.Name), .. sheet.Heddles.Select(h => h.Name)],
        WorksheetPart.Yarns => [.. sheet.Shelf.Select(Yarn)],
        WorksheetPart.Weave => [Weave(sheet.Weave)],
        WorksheetPart.Sett => [phrases.Word(sheet.Purpose), sheet.Sett is { } sett ? Text(sett) : phrases["part.advised"], .. Some(sheet.Reed)],
        WorksheetPart.Colours => [string.Join(", ", sheet.Warp.Runs.Select(r => $"{Text(r.Threads)} {YarnName(r.YarnId)}")), phrases[sheet.Warp.Repeats ? "colours.over" : "colours.middle"]],
        WorksheetPart.Warp => [.. Warp()],
        WorksheetPart.Pieces => [.. sheet.Pieces.Select(Piece)],
        WorksheetPart.Money => [sheet.Currency, .. Rates()],
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "There is no such part."),
    };

    private string LoomName => sheet.Looms.FirstOrDefault(l => l.Id == sheet.LoomId)?.Name ?? sheet.LoomId;

    private IEnumerable<string> Warp()
    {
        yield return phrases.Word(sheet.EndsFit);
        yield return phrases[sheet.FloatingSelvedges ? "warp.floating.two" : "warp.floating.none"];
        yield return $"{phrases["warp.sample"]}: {Text(sheet.Sample)}";
        yield return $"{phrases["warp.header"]}: {Text(sheet.Header)}";
        yield return $"{phrases["warp.gap"]}: {Text(sheet.Gap)}";
    }

    private IEnumerable<string> Rates()
    {
        if (sheet.Rates.WarpWoundPerHour is { } wound) yield return $"{phrases["part.wound"]}: {Text(wound)}";
        if (sheet.Rates.EndsThreadedPerHour is { } threaded) yield return $"{phrases["part.threaded"]}: {Text(threaded)}";
        if (sheet.Rates.EndsSleyedPerHour is { } sleyed) yield return $"{phrases["part.sleyed"]}: {Text(sleyed)}";
        if (sheet.Rates.PicksPerMinute is { } picks) yield return $"{phrases["part.picks"]}: {Text(picks)}";
    }

    private string Piece(PieceEntry entry)
    {
        Piece piece = entry.Piece;
        string[] facts =
        [
            $"{Text(piece.Count)} {phrases[piece.Count == 1 ? $"one.{piece.Kind}" : $"many.{piece.Kind}"]}",
            piece.Name,
            $"{Text(piece.Width)} × {Text(piece.Length)}",
            piece.Fringe == FringeStyle.None ? phrases.Word(piece.Fringe) : $"{phrases.Word(piece.Fringe)} {Text(piece.FringeLength)}",
            .. piece.Hem == Length.Zero ? Some(null) : [$"{phrases["piece.hem"]} {Text(piece.Hem)}"],
            phrases.Word(piece.Wearer),
            .. piece.Make == PieceMake.Flat ? Some(null) : [phrases.Word(piece.Make)],
            .. piece.Join == RingJoin.None ? Some(null) : [phrases.Word(piece.Join)],
            .. piece.Fulled ? [phrases["piece.fulled"]] : Some(null),
            .. piece.Raised ? [phrases["piece.raised"]] : Some(null),
            string.Join(", ", piece.Weft.Concat(piece.PatternWeft).Select(w => YarnName(w.YarnId))),
            .. entry.Weave is null ? Some(null) : [Weave(entry.Weave)],
        ];
        return string.Join(", ", facts);
    }

    private string Yarn(YarnEntry yarn)
    {
        string size = yarn.Label ?? yarn.Count ?? (yarn.LinearDensity is { } tex ? Text(tex) : "");
        string fibres = string.Join(", ", yarn.Fibres.Select(f => phrases.Told(f.FibreId)));
        string price = yarn.Offer?.Price is { } money ? $", {money.Amount.ToString("0.00", CultureInfo.InvariantCulture)} {sheet.Currency}" : "";
        return $"{yarn.Name}: {size}, {fibres}, {yarn.Colour}{price}";
    }

    private static string Weave(WeaveDecision weave) => weave switch
    {
        WeaveDecision.Named named => named.Name,
        WeaveDecision.Drawn drawn => Draft(drawn.Draft),
        WeaveDecision.FromFile file => $"{file.Path}: {Draft(file.Draft)}",
        _ => throw new ArgumentOutOfRangeException(nameof(weave), weave, "There is no such decision."),
    };

    private static string Draft(Core.Weaves.Draft draft) => $"{(draft.Name.Length > 0 ? draft.Name + ", " : "")}{Text(draft.Ends)} × {Text(draft.Picks)}";

    private string YarnName(string id) => sheet.Shelf.FirstOrDefault(y => y.Id == id)?.Name ?? id;

    private string Text<T>(T value)
        where T : struct, IQuantity<T> => phrases.Told(QuantityText.Format(T.Kind, value.BaseValue, units));

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Text(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    private static string[] Some(string? text) => string.IsNullOrEmpty(text) ? [] : [text];
}
